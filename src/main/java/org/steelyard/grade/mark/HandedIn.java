package org.steelyard.grade.mark;

import java.util.List;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.DuplicateRule;

/**
 * How often a student handed in an exercise.
 *
 * @param times 1 or more
 * @param rule which of the sheets stands
 * @param gaveWay where the sheets were read that do not count; none where all do
 */
public record HandedIn(int times, DuplicateRule rule, List<Origin> gaveWay) {

    /** A sheet like most. */
    public static final HandedIn ONCE = new HandedIn(1, DuplicateRule.LAST, List.of());

    private static final int TWICE = 2;

    /**
     * Checks the number and copies the list.
     *
     * @throws IllegalArgumentException if there are more sheets that gave way than were handed in
     */
    public HandedIn {
        gaveWay = List.copyOf(gaveWay);
        if (gaveWay.size() >= times) {
            throw new IllegalArgumentException("of " + times + " sheets " + gaveWay.size() + " gave way");
        }
    }

    /**
     * Whether there is anything to tell.
     *
     * @return true if the student handed in more than one sheet
     */
    public boolean isRepeated() {
        return times > 1;
    }

    /**
     * A number of times.
     *
     * @param times 2 or more
     * @return as {@code twice} or {@code 3 times}
     */
    public static String times(int times) {
        return times == TWICE ? "twice" : times + " times";
    }
}
