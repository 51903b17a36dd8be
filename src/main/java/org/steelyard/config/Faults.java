package org.steelyard.config;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** Collects the faults of one folder, and which keys the reading asked for. */
final class Faults {

    private final List<ConfigFault> list = new ArrayList<>();
    private final Set<String> keys = new TreeSet<>();

    void add(ConfigFault fault) {
        list.add(fault);
    }

    /** A fault of a file as a whole. */
    void add(String file, String reason, String expected) {
        list.add(new ConfigFault(file, 0, "", "", reason, expected));
    }

    /** Remembers a key that the loader knows, for the test that holds the README to it. */
    void known(String keyPath) {
        keys.add(keyPath);
    }

    Set<String> knownKeys() {
        return keys;
    }

    boolean isEmpty() {
        return list.isEmpty();
    }

    /** All faults by file and line. */
    List<ConfigFault> sorted() {
        return list.stream()
                .sorted(Comparator.comparing(ConfigFault::file).thenComparingInt(ConfigFault::line))
                .toList();
    }
}
