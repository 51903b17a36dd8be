package org.steelyard.model;

import java.util.List;

/**
 * A fuel tank. Its table gives the arm of the contents against quantity; between two rows the moment, not the arm, is
 * linear in quantity, which means that each layer of fuel has a centroid of its own. The first layer begins at nothing.
 *
 * @param id short name used in inputs, as centre
 * @param name name in words
 * @param capacityKg usable capacity in kg at the type's standard density, more than zero
 * @param armTable rows with rising quantity; the last one reaches the capacity
 */
public record Tank(String id, String name, double capacityKg, List<TankPoint> armTable) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a text is blank, the capacity is not more than zero, or the table is empty,
     *     does not rise, or ends below the capacity
     */
    public Tank {
        Require.text("tank id", id);
        Require.text("tank name", name);
        Require.positive("capacityKg", capacityKg);
        armTable = List.copyOf(armTable);
        Require.that(!armTable.isEmpty(), "a tank needs at least one row in its arm table");
        for (int i = 1; i < armTable.size(); i++) {
            Require.that(
                    armTable.get(i).quantityKg() > armTable.get(i - 1).quantityKg(),
                    "quantities of an arm table must rise: " + armTable.get(i).quantityKg() + " after "
                            + armTable.get(i - 1).quantityKg());
        }
        Require.that(
                !Tolerance.isBelowKg(armTable.get(armTable.size() - 1).quantityKg(), capacityKg),
                "the arm table must reach the capacity of " + capacityKg + " kg");
    }

    /**
     * The moment of the contents. Past the last row the arm of the last layer goes on, so that an overfilled tank
     * (which is a breach) still has a moment.
     *
     * @param quantityKg fuel in the tank in kg, not negative
     * @return moment in kg·m about the datum, aft positive
     */
    public double momentKgM(double quantityKg) {
        double lowKg = 0;
        double lowKgM = 0;
        for (int i = 0; i < armTable.size(); i++) {
            TankPoint high = armTable.get(i);
            double highKgM = high.quantityKg() * high.armM();
            if (quantityKg <= high.quantityKg() || i == armTable.size() - 1) {
                return lowKgM + (quantityKg - lowKg) * (highKgM - lowKgM) / (high.quantityKg() - lowKg);
            }
            lowKg = high.quantityKg();
            lowKgM = highKgM;
        }
        throw new IllegalStateException("an arm table is never empty");
    }
}
