package org.steelyard.balance;

import java.util.Arrays;
import org.steelyard.model.policy.SharingRule;

/** Shares a total out among places by a rule. */
final class Sharing {

    private Sharing() {}

    /**
     * Each place's part of a total. What exceeds all capacities together goes to the place that a rule fills last, or
     * by capacity, so that nothing is lost and the excess shows.
     *
     * @param total what to share, not negative
     * @param capacities capacity of each place from front to back, more than zero, in the unit of the total
     * @param rule how
     * @return the parts, which sum to the total
     * @throws IllegalArgumentException if there is no place for a total of more than zero
     */
    static double[] share(double total, double[] capacities, SharingRule rule) {
        if (capacities.length == 0 && total > 0) {
            throw new IllegalArgumentException("there is no place for a load of " + total);
        }
        return switch (rule) {
            case BY_CAPACITY -> byCapacity(total, capacities);
            case FRONT_FIRST -> inOrder(total, capacities, true);
            case BACK_FIRST -> inOrder(total, capacities, false);
        };
    }

    private static double[] byCapacity(double total, double[] capacities) {
        double all = Arrays.stream(capacities).sum();
        return Arrays.stream(capacities).map(capacity -> total * capacity / all).toArray();
    }

    private static double[] inOrder(double total, double[] capacities, boolean frontFirst) {
        int n = capacities.length;
        double[] parts = new double[n];
        double left = total;
        for (int step = 0; step < n; step++) {
            int place = frontFirst ? step : n - 1 - step;
            boolean last = step == n - 1;
            parts[place] = last ? left : Math.min(left, capacities[place]);
            left -= parts[place];
        }
        return parts;
    }
}
