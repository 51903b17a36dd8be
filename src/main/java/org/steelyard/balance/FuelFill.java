package org.steelyard.balance;

import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.unit.Amounts;

/** How a total of fuel is shared out among the tanks. */
public final class FuelFill {

    /** Down to the rounding of a double. */
    private static final int HALVINGS = 60;

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

    /**
     * Changes what is in the tanks toward the fill order: less fuel leaves first what the order fills last, more goes
     * first where the order fills first. Tanks that are filled by the order stay so.
     *
     * @param system the type's tanks
     * @param tanksKg fuel in each tank in kg
     * @param totalKg fuel wanted in all in kg, not negative
     * @return fuel in each tank in kg; what no tank has room for is left out
     */
    public static Amounts toward(FuelSystem system, Amounts tanksKg, double totalKg) {
        boolean less = totalKg < tanksKg.sum();
        double lowKg = 0;
        double highKg = system.capacityKg();
        Amounts high = joined(tanksKg, of(system, highKg), less);
        for (int i = 0; i < HALVINGS && high.sum() != totalKg; i++) {
            double middleKg = (lowKg + highKg) / 2;
            Amounts middle = joined(tanksKg, of(system, middleKg), less);
            if (middle.sum() < totalKg) {
                lowKg = middleKg;
            } else {
                highKg = middleKg;
                high = middle;
            }
        }
        return high;
    }

    /** In each tank the less, or the more, of both. */
    private static Amounts joined(Amounts tanksKg, Amounts orderKg, boolean less) {
        double[] joinedKg = new double[tanksKg.size()];
        for (int i = 0; i < joinedKg.length; i++) {
            joinedKg[i] = less ? Math.min(tanksKg.at(i), orderKg.at(i)) : Math.max(tanksKg.at(i), orderKg.at(i));
        }
        return Amounts.of(joinedKg);
    }
}
