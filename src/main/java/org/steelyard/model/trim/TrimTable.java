package org.steelyard.model.trim;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A trim law by a table of CG against take-off mass, bilinear between four neighbours.
 *
 * @param massesKg take-off masses in kg, at least two, rising
 * @param cgsPercentMac CGs in % MAC, at least two, rising
 * @param trimUnits one row for each mass, one value for each CG; units, nose-up positive, never rising with CG
 */
public record TrimTable(Amounts massesKg, Amounts cgsPercentMac, List<Amounts> trimUnits) implements TrimLaw {

    /**
     * Checks shape and order.
     *
     * @throws IllegalArgumentException if the table is not full or an order is broken
     */
    public TrimTable {
        trimUnits = List.copyOf(trimUnits);
        Require.that(massesKg.size() >= 2, "a trim table needs at least two masses");
        for (int i = 1; i < massesKg.size(); i++) {
            Require.that(massesKg.at(i) > massesKg.at(i - 1), "masses of a trim table must rise");
        }
        Require.that(
                trimUnits.size() == massesKg.size(),
                "a trim table needs a row for each of its " + massesKg.size() + " masses, not " + trimUnits.size());
        for (Amounts row : trimUnits) {
            Require.that(
                    row.size() == cgsPercentMac.size(),
                    "each row of a trim table needs a value for each of its " + cgsPercentMac.size() + " CGs, not "
                            + row.size());
            TrimPoints.requireOrder(points(cgsPercentMac, row));
        }
    }

    private static List<TrimPoint> points(Amounts cgs, Amounts units) {
        List<TrimPoint> points = new ArrayList<>();
        for (int i = 0; i < cgs.size(); i++) {
            points.add(new TrimPoint(cgs.at(i), units.at(i)));
        }
        return points;
    }

    @Override
    public OptionalDouble trimUnitsAt(double cgPercentMac, double massKg) {
        if (!reaches(massKg) || !cgRange().contains(cgPercentMac)) {
            return OptionalDouble.empty();
        }
        double onKg = nearestKg(massKg);
        double onPercentMac = cgRange().nearestPercentMac(cgPercentMac);
        int row = upper(massesKg, onKg);
        int column = upper(cgsPercentMac, onPercentMac);
        double high = unitsAt(row, column, onKg);
        if (onPercentMac == cgsPercentMac.at(column)) {
            return OptionalDouble.of(high);
        }
        double low = unitsAt(row, column - 1, onKg);
        double t = (onPercentMac - cgsPercentMac.at(column - 1))
                / (cgsPercentMac.at(column) - cgsPercentMac.at(column - 1));
        return OptionalDouble.of(low + t * (high - low));
    }

    /**
     * The lowest mass of the table.
     *
     * @return mass in kg
     */
    public double minMassKg() {
        return massesKg.at(0);
    }

    /**
     * The highest mass of the table.
     *
     * @return mass in kg
     */
    public double maxMassKg() {
        return massesKg.at(massesKg.size() - 1);
    }

    /**
     * Whether the table reaches a mass.
     *
     * @param massKg mass in kg
     * @return true from {@link #minMassKg} to {@link #maxMassKg}, both included
     */
    public boolean reaches(double massKg) {
        return Tolerance.isWithinKg(massKg, minMassKg(), maxMassKg());
    }

    private double nearestKg(double massKg) {
        return Math.min(Math.max(massKg, minMassKg()), maxMassKg());
    }

    /** The first place after the first one whose value is not below. */
    private static int upper(Amounts rising, double value) {
        int i = 1;
        while (rising.at(i) < value) {
            i++;
        }
        return i;
    }

    /** The trim of a column between a row and the one before it. */
    private double unitsAt(int row, int column, double massKg) {
        double t = (massKg - massesKg.at(row - 1)) / (massesKg.at(row) - massesKg.at(row - 1));
        double low = trimUnits.get(row - 1).at(column);
        return low + t * (trimUnits.get(row).at(column) - low);
    }

    @Override
    public CgRange cgRange() {
        return new CgRange(cgsPercentMac.at(0), cgsPercentMac.at(cgsPercentMac.size() - 1));
    }

    @Override
    public List<TrimPoint> pointsAt(double massKg) {
        if (!reaches(massKg)) {
            return List.of();
        }
        double onKg = nearestKg(massKg);
        int row = upper(massesKg, onKg);
        double[] units = new double[cgsPercentMac.size()];
        for (int column = 0; column < units.length; column++) {
            units[column] = unitsAt(row, column, onKg);
        }
        return points(cgsPercentMac, Amounts.of(units));
    }

    @Override
    public <T> T match(Cases<T> cases) {
        return cases.table(this);
    }
}
