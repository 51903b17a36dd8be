package org.steelyard.model.loading;

import org.steelyard.model.type.MassScheme;
import org.steelyard.model.unit.Require;

/**
 * What lies in one hold.
 *
 * @param massKg baggage and cargo by actual mass in kg, not negative
 * @param bags pieces counted at the scheme's bag mass on top of it
 */
public record HoldLoad(double massKg, int bags) {

    /** An empty hold. */
    public static final HoldLoad EMPTY = new HoldLoad(0, 0);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public HoldLoad {
        Require.notNegative("massKg", massKg);
        Require.notNegative("bags", bags);
    }

    /**
     * The mass of the hold's contents.
     *
     * @param scheme standard masses, for the bags
     * @return mass in kg
     */
    public double massKg(MassScheme scheme) {
        return massKg + bags * scheme.bagKg();
    }
}
