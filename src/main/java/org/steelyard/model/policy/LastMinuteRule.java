package org.steelyard.model.policy;

import org.steelyard.model.unit.Require;

/**
 * How much may change after the load sheet is closed without a new one. What comes and what goes both count, so that
 * persons who change their seats do, too.
 *
 * @param passengers how many passengers
 * @param massKg how much traffic load in kg
 * @param fuelKg how much fuel in kg
 */
public record LastMinuteRule(int passengers, double massKg, double fuelKg) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public LastMinuteRule {
        Require.notNegative("passengers", passengers);
        Require.notNegative("massKg", massKg);
        Require.notNegative("fuelKg", fuelKg);
    }
}
