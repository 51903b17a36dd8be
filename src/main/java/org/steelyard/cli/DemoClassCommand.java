package org.steelyard.cli;

import java.io.IOException;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import org.steelyard.demo.ClassDemo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

/** Writes the demo class anew. */
@Command(
        name = "make-demo-class",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Write the invented class of students and its key of planted slips anew.")
final class DemoClassCommand implements Callable<Integer> {

    @Spec
    private CommandSpec spec;

    @Mixin
    private ConfigOption config;

    @Option(
            names = {"-o", "--into"},
            paramLabel = "FOLDER",
            defaultValue = "data-in",
            description = "Where the folder class and the key are written (${DEFAULT-VALUE}).")
    private Path into;

    @Override
    public Integer call() throws CannotException {
        try {
            ClassDemo.write(into, config.load());
        } catch (IOException e) {
            throw new CannotException("The demo class cannot be written to " + into + ": " + e);
        }
        spec.commandLine().getOut().println("The demo class is in " + into.resolve("class"));
        return ExitCode.FINISHED;
    }
}
