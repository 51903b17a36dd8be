package org.steelyard.cli;

import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.Version;
import org.steelyard.demo.ClassDemo;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the demo class anew. */
@Command(
        name = "make-demo-class",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Write the invented class of students and its key of planted slips anew.")
final class DemoClassCommand implements Callable<Integer> {

    @Mixin
    private DemoOutput output;

    @Override
    public Integer call() throws CannotException {
        return output.write("The demo class", "class", ClassDemo::write);
    }
}
