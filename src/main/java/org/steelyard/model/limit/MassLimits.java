package org.steelyard.model.limit;

import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A type's structural limits of mass, all in kg.
 *
 * @param maxRampKg maximum ramp (taxi) mass
 * @param maxTakeoffKg maximum take-off mass
 * @param maxLandingKg maximum landing mass
 * @param maxZeroFuelKg maximum zero-fuel mass
 * @param minFlightKg minimum mass in flight
 */
public record MassLimits(
        double maxRampKg, double maxTakeoffKg, double maxLandingKg, double maxZeroFuelKg, double minFlightKg) {

    /**
     * Checks the numbers and their order.
     *
     * @throws IllegalArgumentException unless ramp, take-off and landing maxima fall or stay in that order, the
     *     zero-fuel maximum is at most the take-off one, and all are above a positive minimum
     */
    public MassLimits {
        Require.positive("minFlightKg", minFlightKg);
        Require.that(
                !Tolerance.isBelowKg(maxRampKg, maxTakeoffKg),
                "the maximum ramp mass must not be below the maximum take-off mass");
        Require.that(
                !Tolerance.isBelowKg(maxTakeoffKg, maxLandingKg),
                "the maximum take-off mass must not be below the maximum landing mass");
        Require.that(
                !Tolerance.isBelowKg(maxTakeoffKg, maxZeroFuelKg),
                "the maximum take-off mass must not be below the maximum zero-fuel mass");
        Require.that(maxZeroFuelKg > minFlightKg, "the maximum zero-fuel mass must be above the minimum mass");
        Require.that(maxLandingKg > minFlightKg, "the maximum landing mass must be above the minimum mass");
        Require.finite("maxRampKg", maxRampKg);
    }
}
