package org.steelyard.analyse.column;

import java.util.Comparator;

/** The order of names: numbers by value and before words, so that flap setting 5 comes before 15. */
public final class GroupOrder {

    public static final Comparator<String> BY_NAME =
            Comparator.comparing(GroupOrder::number).thenComparing(Comparator.naturalOrder());

    private GroupOrder() {}

    private static double number(String name) {
        boolean digits = !name.isEmpty() && name.chars().allMatch(c -> c >= '0' && c <= '9');
        return digits ? Double.parseDouble(name) : Double.POSITIVE_INFINITY;
    }
}
