package org.steelyard.config.value;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.model.unit.EditDistance;

/** Finds the known name that a mistyped one most likely stands for. */
final class Nearest {

    private static final int LONGEST = 100;

    private Nearest() {}

    /** The known name with the fewest letters to change; empty where more than half of the letters would change. */
    static Optional<String> to(String typed, Collection<String> known) {
        if (typed.length() > LONGEST) {
            return Optional.empty();
        }
        return known.stream()
                .min(Comparator.comparingInt((String name) -> distance(typed, name))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(name -> 2 * distance(typed, name) <= Math.max(typed.length(), name.length()));
    }

    /** How many letters to insert, delete or replace, capitals aside. */
    static int distance(String one, String other) {
        return EditDistance.between(one.toLowerCase(Locale.ROOT), other.toLowerCase(Locale.ROOT));
    }

    /** A clause for the end of a reason; blank where nothing is near. */
    static String hint(String typed, Collection<String> known) {
        return to(typed, known)
                .map(name -> "; the nearest that is known is '" + name + "'")
                .orElse("");
    }
}
