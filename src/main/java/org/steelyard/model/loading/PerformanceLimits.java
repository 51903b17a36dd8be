package org.steelyard.model.loading;

import java.util.OptionalDouble;
import org.steelyard.model.unit.Require;

/**
 * Limits of mass that the day sets (runway, climb, obstacles), below or above the structural ones.
 *
 * @param takeoffKg performance-limited take-off mass in kg
 * @param landingKg performance-limited landing mass in kg
 */
public record PerformanceLimits(OptionalDouble takeoffKg, OptionalDouble landingKg) {

    /** No limit but the type's. */
    public static final PerformanceLimits NONE = new PerformanceLimits(OptionalDouble.empty(), OptionalDouble.empty());

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not more than zero
     */
    public PerformanceLimits {
        takeoffKg.ifPresent(mass -> Require.positive("takeoffKg", mass));
        landingKg.ifPresent(mass -> Require.positive("landingKg", mass));
    }
}
