package org.steelyard.cli;

import java.util.concurrent.Callable;
import org.steelyard.cli.option.CannotException;
import org.steelyard.cli.option.Version;
import org.steelyard.demo.DemoSeason;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;

/** Writes the demo season anew. */
@Command(
        name = "make-demo",
        mixinStandardHelpOptions = true,
        versionProvider = Version.class,
        header = "Write the invented demo season and its key of planted faults anew.")
final class DemoCommand implements Callable<Integer> {

    @Mixin
    private DemoOutput output;

    @Override
    public Integer call() throws CannotException {
        return output.write("The demo season", "demo", DemoSeason::write);
    }
}
