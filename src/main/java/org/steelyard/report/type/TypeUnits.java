package org.steelyard.report.type;

import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.report.text.NumberText;

/** The figures of a type in the units of its users. */
final class TypeUnits {

    /** A unit of length of which more than so many make a metre needs one decimal at most. */
    private static final double FINE = 10;

    private final AircraftType type;
    private final DisplayUnits units;

    TypeUnits(AircraftType type) {
        this.type = type;
        this.units = type.geometry().units();
    }

    String massUnit() {
        return units.mass().symbol();
    }

    String lengthUnit() {
        return units.length().symbol();
    }

    boolean speaksOfArms() {
        return units.cg() == CgForm.ARM;
    }

    double massIn(double massKg) {
        return units.mass().fromKg(massKg);
    }

    double armIn(double armM) {
        return units.length().fromM(armM);
    }

    String mass(double massKg) {
        return NumberText.fixed(massIn(massKg), units.mass() == MassUnit.TONNE ? 2 : 0);
    }

    String massWithUnit(double massKg) {
        return mass(massKg) + " " + massUnit();
    }

    String arm(double armM) {
        double perM = units.length().fromM(1);
        return NumberText.fixed(armIn(armM), perM > 900 ? 0 : perM > FINE ? 1 : 3);
    }

    String armWithUnit(double armM) {
        return arm(armM) + " " + lengthUnit();
    }

    double percent(double armM) {
        return type.geometry().chord().percentAt(armM);
    }

    String percentText(double armM) {
        return NumberText.fixed(percent(armM), 1);
    }

    String index(double massKg, double armM) {
        return NumberText.fixed(type.geometry().index().indexOf(MassMoment.at(massKg, armM)), 1);
    }

    /** A CG as the type's users speak of it. */
    String cg(double cgPercentMac) {
        return speaksOfArms()
                ? armWithUnit(type.geometry().chord().armAt(cgPercentMac))
                : NumberText.fixed(cgPercentMac, 1) + " % MAC";
    }

    /** Where a CG stands on an axis of CGs. */
    double cgIn(double cgPercentMac) {
        return speaksOfArms() ? armIn(type.geometry().chord().armAt(cgPercentMac)) : cgPercentMac;
    }

    /** The same place the other way: as % MAC where the users speak of arms. */
    double otherCg(double cgIn) {
        return speaksOfArms()
                ? type.geometry().chord().percentAt(units.length().toM(cgIn))
                : armIn(type.geometry().chord().armAt(cgIn));
    }

    String otherCgAxis() {
        return speaksOfArms() ? "% MAC" : "arm aft of datum, " + lengthUnit();
    }

    String cgAxis() {
        return speaksOfArms() ? "CG aft of datum, " + lengthUnit() : "CG, % MAC";
    }
}
