package org.steelyard.config.source;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Collects the faults of one folder, and which keys the reading asked for. */
public final class Faults {

    private static final int MOST_OF_A_FILE = 100;

    private final List<ConfigFault> list = new ArrayList<>();
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Set<String> keys = new TreeSet<>();

    /** Takes a fault; of those of one file beyond the first hundred only the number is kept. */
    public void add(ConfigFault fault) {
        if (counts.merge(fault.file(), 1, Integer::sum) <= MOST_OF_A_FILE) {
            list.add(fault);
        }
    }

    /** A fault of a file as a whole. */
    public void add(String file, String reason, String expected) {
        add(new ConfigFault(file, 0, "", "", reason, expected));
    }

    /** Remembers a key that the loader knows, for the test that holds the README to it. */
    public void known(String keyPath) {
        keys.add(keyPath);
    }

    Set<String> knownKeys() {
        return keys;
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** The faults by file and line, behind those of a file how many more it has. */
    public List<ConfigFault> sorted() {
        List<ConfigFault> all = new ArrayList<>(list);
        all.sort(Comparator.comparingInt(ConfigFault::line));
        counts.forEach((file, count) -> {
            if (count > MOST_OF_A_FILE) {
                String reason = String.format(Locale.ROOT, "%,d more faults of this file", count - MOST_OF_A_FILE);
                all.add(new ConfigFault(file, 0, "", "", reason, ""));
            }
        });
        all.sort(Comparator.comparing(ConfigFault::file));
        return all;
    }
}
