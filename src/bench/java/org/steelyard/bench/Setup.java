package org.steelyard.bench;

import java.nio.file.Path;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.type.AircraftType;

/** The configuration that all measurements use. */
record Setup(Configuration configuration) {

    static Setup of(Path folder) {
        ConfigResult result = ConfigFolder.load(folder);
        if (result instanceof ConfigResult.Loaded loaded) {
            return new Setup(loaded.configuration());
        }
        throw new IllegalArgumentException(result.toString());
    }

    AircraftType type() {
        return configuration.types().get("jet180");
    }
}
