package org.steelyard.model.limit;

import org.steelyard.model.unit.Require;

/**
 * The largest difference between the fuel of two tanks, one on each side.
 *
 * @param leftTank position of one tank in the type's list
 * @param rightTank position of the other
 * @param maxKg largest difference in kg, more than zero
 */
public record ImbalanceLimit(int leftTank, int rightTank, double maxKg) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the tanks are the same or the maximum is not more than zero
     */
    public ImbalanceLimit {
        Require.that(leftTank != rightTank, "an imbalance is between two tanks");
        Require.positive("maxKg", maxKg);
    }
}
