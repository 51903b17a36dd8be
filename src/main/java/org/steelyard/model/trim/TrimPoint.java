package org.steelyard.model.trim;

import org.steelyard.model.unit.Require;

/**
 * A point of a trim scale.
 *
 * @param cgPercentMac CG in % MAC
 * @param trimUnits stabilizer trim in units, nose-up positive
 */
public record TrimPoint(double cgPercentMac, double trimUnits) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public TrimPoint {
        Require.finite("cgPercentMac", cgPercentMac);
        Require.finite("trimUnits", trimUnits);
    }
}
