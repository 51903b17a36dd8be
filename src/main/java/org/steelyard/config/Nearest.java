package org.steelyard.config;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that a mistyped one most likely stands for. */
final class Nearest {

    private Nearest() {}

    /** The known name with the fewest letters to change; empty where more than half of the letters would change. */
    static Optional<String> to(String typed, Collection<String> known) {
        return known.stream()
                .min(Comparator.comparingInt((String name) -> distance(typed, name))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(name -> 2 * distance(typed, name) <= Math.max(typed.length(), name.length()));
    }

    /** Levenshtein's distance (1965): how many letters to insert, delete or replace, capitals aside. */
    static int distance(String one, String other) {
        String a = one.toLowerCase(Locale.ROOT);
        String b = other.toLowerCase(Locale.ROOT);
        int[] before = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            before[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            int[] here = new int[b.length() + 1];
            here[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int replaced = before[j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
                here[j] = Math.min(replaced, 1 + Math.min(before[j], here[j - 1]));
            }
            before = here;
        }
        return before[b.length()];
    }

    /** A clause for the end of a reason; blank where nothing is near. */
    static String hint(String typed, Collection<String> known) {
        return to(typed, known)
                .map(name -> "; the nearest that is known is '" + name + "'")
                .orElse("");
    }
}
