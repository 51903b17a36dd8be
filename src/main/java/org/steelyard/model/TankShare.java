package org.steelyard.model;

/**
 * A tank's part in a stage of burning or filling.
 *
 * @param tank position of the tank in the type's list, from 0
 * @param share its part of the flow relative to the other tanks of the stage, more than zero
 * @param untilKg the quantity in kg at which the tank leaves the stage: burning down to it, or filling up to it
 */
public record TankShare(int tank, double share, double untilKg) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the position or quantity is negative or the share not more than zero
     */
    public TankShare {
        Require.notNegative("tank", tank);
        Require.positive("share", share);
        Require.notNegative("untilKg", untilKg);
    }
}
