package org.steelyard.model;

/**
 * A row of a tank's arm table.
 *
 * @param quantityKg all the fuel in the tank in kg, more than zero
 * @param armM arm of that whole quantity in m from the datum, aft positive
 */
public record TankPoint(double quantityKg, double armM) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the quantity is not more than zero or the arm is not finite
     */
    public TankPoint {
        Require.positive("quantityKg", quantityKg);
        Require.finite("armM", armM);
    }
}
