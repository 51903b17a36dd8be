package org.steelyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.steelyard.demo.DemoSeason;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the demo season anew. */
@Command(
        name = "make-demo",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Write the invented demo season and its key of planted faults anew.")
final class DemoCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Option(
            names = {"-o", "--into"},
            paramLabel = "FOLDER",
            defaultValue = "data-in",
            description = "Where the folder demo and the key are written (${DEFAULT-VALUE}).")
    private Path into;

    @Override
    public Integer call() throws CannotException {
        try {
            DemoSeason.write(into, config.load());
        } catch (IOException e) {
            throw new CannotException("The demo season cannot be written to " + into + ": " + e);
        }
        spec.commandLine().getOut().println("The demo season is in " + into.resolve("demo"));
        return ExitCode.FINISHED;
    }
}
