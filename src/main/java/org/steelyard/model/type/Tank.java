package org.steelyard.model.type;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A fuel tank. Its table gives the arm of the contents against quantity; between two rows the moment, not the arm, is
 * linear in quantity, which means that each layer of fuel has a centroid of its own. The first layer begins at nothing.
 *
 * @param id short name used in inputs, as centre
 * @param name name in words
 * @param capacityKg usable capacity in kg at the type's standard density, more than zero
 * @param armTable rows with rising quantity; the last one reaches the capacity
 * @param byVolume whether the capacity is that of a volume, and another mass at another density
 */
public record Tank(String id, String name, double capacityKg, List<TankPoint> armTable, boolean byVolume) {

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

    boolean hasVolumes() {
        return byVolume || armTable.stream().anyMatch(TankPoint::byVolume);
    }

    /**
     * The tank where each litre has so many times its mass. Rows that are masses stay what they are; one that is then
     * on the wrong side of a volume is left out, and short of the capacity the last layer goes on up to it.
     */
    Tank denser(double factor) {
        if (!hasVolumes()) {
            return this;
        }
        double thenKg = byVolume ? factor * capacityKg : capacityKg;
        List<TankPoint> rows = new ArrayList<>();
        for (int i = 0; i < armTable.size(); i++) {
            if (armTable.get(i).byVolume() || isInOrder(i, factor)) {
                rows.add(armTable.get(i).denser(factor));
            }
        }
        if (Tolerance.isBelowKg(rows.get(rows.size() - 1).quantityKg(), thenKg)) {
            rows.add(new TankPoint(thenKg, momentKgM(rows, thenKg) / thenKg, byVolume));
        }
        return new Tank(id, name, thenKg, rows, byVolume);
    }

    private boolean isInOrder(int row, double factor) {
        double massKg = armTable.get(row).quantityKg();
        for (int i = 0; i < armTable.size(); i++) {
            double otherKg = armTable.get(i).denser(factor).quantityKg();
            if ((i < row && otherKg >= massKg) || (i > row && otherKg <= massKg)) {
                return false;
            }
        }
        return true;
    }

    /**
     * The moment of the contents. Past the last row the arm of the last layer goes on, so that an overfilled tank
     * (which is a breach) still has a moment.
     *
     * @param quantityKg fuel in the tank in kg, not negative
     * @return moment in kg·m about the datum, aft positive
     */
    public double momentKgM(double quantityKg) {
        return momentKgM(armTable, quantityKg);
    }

    private static double momentKgM(List<TankPoint> rows, double quantityKg) {
        double lowKg = 0;
        double lowKgM = 0;
        for (int i = 0; i < rows.size(); i++) {
            TankPoint high = rows.get(i);
            double highKgM = high.quantityKg() * high.armM();
            if (quantityKg <= high.quantityKg() || i == rows.size() - 1) {
                return lowKgM + (quantityKg - lowKg) * (highKgM - lowKgM) / (high.quantityKg() - lowKg);
            }
            lowKg = high.quantityKg();
            lowKgM = highKgM;
        }
        throw new IllegalStateException("an arm table is never empty");
    }
}
