package org.steelyard.demo;

import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.VolumeUnit;

/** The kinds of files of the season, each with its heading map and its units. */
enum Style {
    /** The house's export: kilograms. */
    HOUSE("house", MassUnit.KG, false),
    /** The house's workbook: pounds. */
    LEDGER("ledger", MassUnit.LB, false),
    /** The club's list: pounds, fuel in gallons. */
    CLUB("club", MassUnit.LB, true);

    private final String mapName;
    private final MassUnit massUnit;
    private final boolean gallons;

    Style(String mapName, MassUnit massUnit, boolean gallons) {
        this.mapName = mapName;
        this.massUnit = massUnit;
        this.gallons = gallons;
    }

    String mapName() {
        return mapName;
    }

    /** A mass as a cell: whole units. */
    Cell mass(double massKg) {
        return Cell.count(Math.round(massUnit.fromKg(massKg)));
    }

    double massKg(double inCell) {
        return massUnit.toKg(inCell);
    }

    /** Fuel as a cell: whole units of mass, or tenths of a gallon. */
    Cell fuel(double massKg, double densityKgPerL) {
        return gallons
                ? new Cell.Amount(Math.round(VolumeUnit.US_GAL.fromL(massKg / densityKgPerL) * 10) / 10.0, 1)
                : mass(massKg);
    }

    double fuelKg(double inCell, double densityKgPerL) {
        return gallons ? VolumeUnit.US_GAL.toL(inCell) * densityKgPerL : massKg(inCell);
    }
}
