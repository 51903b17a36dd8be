package org.steelyard.config;

import java.util.List;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.ConfigSource;

/** What came of reading a configuration folder: all of it, or every fault in it. */
public sealed interface ConfigResult permits ConfigResult.Loaded, ConfigResult.Faulty {

    /**
     * The files that were read.
     *
     * @return each with its checksum, sorted by path
     */
    List<ConfigSource> sources();

    /**
     * The folder is sound.
     *
     * @param configuration what it says
     */
    record Loaded(Configuration configuration) implements ConfigResult {

        @Override
        public List<ConfigSource> sources() {
            return configuration.sources();
        }
    }

    /**
     * The folder cannot be used.
     *
     * @param faults all of them, by file and line; at least one
     * @param sources the files that could be read
     */
    record Faulty(List<ConfigFault> faults, List<ConfigSource> sources) implements ConfigResult {

        public Faulty {
            faults = List.copyOf(faults);
            sources = List.copyOf(sources);
        }
    }
}
