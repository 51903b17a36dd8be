package org.steelyard.model.type;

import org.steelyard.model.unit.Require;

/**
 * A row of a tank's arm table.
 *
 * @param quantityKg all the fuel in the tank in kg, more than zero
 * @param armM arm of that whole quantity in m from the datum, aft positive
 * @param byVolume whether the quantity is that of a volume, and another one at another density
 */
public record TankPoint(double quantityKg, double armM, boolean byVolume) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the quantity is not more than zero or the arm is not finite
     */
    public TankPoint {
        Require.positive("quantityKg", quantityKg);
        Require.finite("armM", armM);
    }

    /** The row where each litre has so many times its mass. */
    TankPoint denser(double factor) {
        return byVolume ? new TankPoint(factor * quantityKg, armM, true) : this;
    }
}
