package org.steelyard.model.type;

import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A tank's part in a stage of burning or filling.
 *
 * @param tank position of the tank in the type's list, from 0
 * @param share its part of the flow relative to the other tanks of the stage, more than zero
 * @param untilKg the quantity in kg at which the tank leaves the stage: burning down to it, or filling up to it
 * @param byVolume whether that quantity is that of a volume, and another one at another density
 */
public record TankShare(int tank, double share, double untilKg, boolean byVolume) {

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

    /** The part where each litre has so many times its mass; what ends at a full tank still does. */
    TankShare denser(double factor, Tank before, Tank after) {
        double thenKg = byVolume ? factor * untilKg : untilKg;
        boolean full = !Tolerance.isBelowKg(untilKg, before.capacityKg());
        return new TankShare(tank, share, full ? after.capacityKg() : Math.min(thenKg, after.capacityKg()), byVolume);
    }
}
