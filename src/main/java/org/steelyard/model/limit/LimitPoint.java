package org.steelyard.model.limit;

import org.steelyard.model.unit.Require;

/**
 * A vertex of a limit line.
 *
 * @param massKg mass in kg, more than zero
 * @param armM the limit's arm at that mass, in m from the datum, aft positive
 */
public record LimitPoint(double massKg, double armM) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the mass is not more than zero or a number is not finite
     */
    public LimitPoint {
        Require.positive("massKg", massKg);
        Require.finite("armM", armM);
    }
}
