package org.steelyard.balance;

import org.steelyard.model.Amounts;
import org.steelyard.model.FuelSystem;

/** How a total of fuel is shared out among the tanks. */
public final class FuelFill {

    private FuelFill() {}

    /**
     * Follows the fill order.
     *
     * @param system the type's tanks
     * @param totalKg fuel in kg, not negative
     * @return fuel in each tank in kg
     */
    public static Amounts of(FuelSystem system, double totalKg) {
        double[] tanksKg = new double[system.tanks().size()];
        FuelFlow.fill(system.tanks(), system.fillOrder(), tanksKg, totalKg);
        return Amounts.of(tanksKg);
    }
}
