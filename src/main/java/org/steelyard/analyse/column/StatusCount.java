package org.steelyard.analyse.column;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.analyse.figure.Spread;

/**
 * Flights of one group (a type, a tail, a route, a month) by status.
 *
 * @param group the group's name
 * @param flights all of them
 * @param clean flights with status clean
 * @param marginal flights with status marginal
 * @param breached flights with status breached
 */
public record StatusCount(String group, long flights, long clean, long marginal, long breached) {

    public static final Comparator<StatusCount> BY_NAME = Comparator.comparing(StatusCount::group, GroupOrder.BY_NAME);

    public static final Comparator<StatusCount> IN_TIME = Comparator.comparing(StatusCount::group);

    /**
     * The share of flights outside a limit, the greatest first; then the share close to one, then by name. Groups of
     * few flights come last, whatever their shares: one bad flight of one says little.
     */
    public static final Comparator<StatusCount> WORST_FIRST = Comparator.comparing(StatusCount::few)
            .thenComparing(StatusCount::shareBreached, Comparator.reverseOrder())
            .thenComparing(StatusCount::shareMarginal, Comparator.reverseOrder())
            .thenComparing(BY_NAME);

    /** Whether the group is so small that its shares say little. */
    public boolean few() {
        return flights < Spread.FEW;
    }

    /** Share of breached flights, from 0 to 1; 0 for a group without flights. */
    public double shareBreached() {
        return share(breached);
    }

    /** Share of marginal flights, from 0 to 1; 0 for a group without flights. */
    public double shareMarginal() {
        return share(marginal);
    }

    private double share(long some) {
        return flights == 0 ? 0 : (double) some / flights;
    }

    /** The worst of several groups: the first, if it has a flight outside a limit and is not of few flights. */
    public static Optional<StatusCount> worst(List<StatusCount> worstFirst) {
        return worstFirst.stream()
                .limit(worstFirst.size() < 2 ? 0 : 1)
                .filter(count -> count.breached() > 0 && !count.few())
                .findFirst();
    }
}
