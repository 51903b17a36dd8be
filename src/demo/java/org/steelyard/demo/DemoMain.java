package org.steelyard.demo;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.report.file.Destination;

/**
 * Writes the demo season, the demo class and their keys anew, over what stands there.
 *
 * <p>Two arguments, both optional: the folder to write into (data-in) and the configuration (config).
 */
public final class DemoMain {

    private DemoMain() {}

    public static void main(String[] args) throws IOException {
        Path into = Path.of(args.length > 0 ? args[0] : "data-in");
        Path config = Path.of(args.length > 1 ? args[1] : "config");
        if (!(ConfigFolder.load(config) instanceof ConfigResult.Loaded loaded)) {
            throw new IllegalArgumentException(
                    "The configuration in " + config + " has faults; check-config names them");
        }
        Destination to = new Destination(into, List.of(), true);
        DemoSeason.write(to, loaded.configuration());
        ClassDemo.write(to, loaded.configuration());
    }
}
