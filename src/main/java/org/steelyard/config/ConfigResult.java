package org.steelyard.config;

import java.util.List;

/** What came of reading a configuration folder: all of it, or every fault in it. */
public sealed interface ConfigResult permits ConfigResult.Loaded, ConfigResult.Faulty {

    /**
     * The folder is sound.
     *
     * @param configuration what it says
     */
    record Loaded(Configuration configuration) implements ConfigResult {}

    /**
     * The folder cannot be used.
     *
     * @param faults all of them, by file and line; at least one
     */
    record Faulty(List<ConfigFault> faults) implements ConfigResult {

        /** Copies the list. */
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
