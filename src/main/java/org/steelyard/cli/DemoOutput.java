package org.steelyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.ConfigOption;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.cli.option.ForceOption;
import org.steelyard.config.Configuration;
import org.steelyard.report.file.Destination;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** What the commands that write invented inputs have in common. */
final class DemoOutput {

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Mixin
    private ForceOption force;

    @Option(
            names = {"-o", "--into"},
            paramLabel = "FOLDER",
            defaultValue = "data-in",
            description = "Where the folder and its key are written (${DEFAULT-VALUE}).")
    private Path into;

    /** What writes it. */
    @FunctionalInterface
    interface Writing {
        void into(Destination to, Configuration configuration) throws IOException;
    }

    int write(String what, String folder, Writing writing) throws CannotException {
        try {
            writing.into(force.to(into, List.of()), config.load());
        } catch (IOException e) {
            throw CannotException.unwritten(what, into, e);
        }
        spec.commandLine().getOut().println(what + " is in " + into.resolve(folder));
        return ExitCode.FINISHED;
    }
}
