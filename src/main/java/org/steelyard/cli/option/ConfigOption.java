package org.steelyard.cli.option;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.config.source.ConfigFault;
import picocli.CommandLine.Option;

/** The option for the configuration folder, and its loading. */
public final class ConfigOption {

    @Option(
            names = {"-c", "--config"},
            paramLabel = "FOLDER",
            defaultValue = "config",
            description = "Aircraft types, fleet, standard masses, policy and heading maps (${DEFAULT-VALUE}).")
    private Path folder;

    /** Where the configuration lies. */
    public Path folder() {
        return folder;
    }

    /** Reads the folder, faults and all. */
    public ConfigResult read() {
        return ConfigFolder.load(folder);
    }

    /** Loads the folder, or tells all its faults at once. */
    public Configuration load() throws CannotException {
        return loaded(read());
    }

    /** Loads what one flight of a type or a tail needs, or tells all faults at once. */
    public Configuration loadForFlight(Optional<String> type, Optional<String> tail) throws CannotException {
        return loaded(ConfigFolder.loadForFlight(folder, type, tail));
    }

    private Configuration loaded(ConfigResult result) throws CannotException {
        if (result instanceof ConfigResult.Loaded loaded) {
            return loaded.configuration();
        }
        List<String> lines = new ArrayList<>();
        List<ConfigFault> faults = ((ConfigResult.Faulty) result).faults();
        lines.add("The configuration in " + folder + " cannot be used: " + faults.size()
                + (faults.size() == 1 ? " fault" : " faults"));
        faults.forEach(fault -> lines.add("  " + fault.message()));
        throw new CannotException(lines);
    }
}
