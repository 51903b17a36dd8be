package org.steelyard.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.steelyard.config.Configuration;
import org.steelyard.report.file.Destination;
import picocli.CommandLine.Option;

/** Whether a command may write over files that this program did not write, or that it reads. */
public final class ForceOption {

    @Option(
            names = "--force",
            description = "Write also over files that this program did not write, or that were changed since.")
    private boolean force;

    public boolean isGiven() {
        return force;
    }

    /** A place for outputs that are made of some inputs. */
    public Destination to(Path path, Collection<Path> read) {
        return new Destination(path, read, force);
    }

    /** A place for outputs that are made of a configuration, and what it was read from. */
    public Destination to(Path path, Configuration configuration, Path folder) {
        return to(path, configuration, folder, List.of());
    }

    /** A place for outputs that are made of a configuration and more. */
    public Destination to(Path path, Configuration configuration, Path folder, Collection<Path> more) {
        List<Path> read = new ArrayList<>(more);
        configuration.sources().forEach(source -> read.add(folder.resolve(source.path())));
        return to(path, read);
    }
}
