package org.steelyard.balance;

import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.unit.Amounts;

/** What is left in each tank when so much has been burnt since take-off. */
public final class FuelAtBurn {

    private FuelAtBurn() {}

    /**
     * Follows the burn order.
     *
     * @param system the type's tanks
     * @param takeoffKg fuel in each tank at take-off in kg
     * @param burntKg how much has been burnt in kg
     * @return fuel in each tank in kg
     */
    public static Amounts of(FuelSystem system, Amounts takeoffKg, double burntKg) {
        double[] tanksKg = takeoffKg.toArray();
        FuelFlow.burn(system.tanks(), system.burnOrder(), tanksKg, burntKg, () -> {});
        return Amounts.of(tanksKg);
    }
}
