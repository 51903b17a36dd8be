package org.steelyard.grade.text;

import java.util.Locale;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CgForm;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;

/** Figures of a load sheet in the units of the type's users. */
public final class FigureText {

    /** Less than shows, and more than turning pounds into kilograms and back leaves. */
    private static final double WHOLE = 0.005;

    private final AircraftType type;

    /**
     * For a type.
     *
     * @param type whose units are used
     */
    public FigureText(AircraftType type) {
        this.type = type;
    }

    /**
     * A mass.
     *
     * @param massKg in kg
     * @return in the type's unit, whole (tons with three decimals), with the unit
     */
    public String mass(double massKg) {
        return massNumber(massKg) + " " + massUnit().symbol();
    }

    /**
     * A mass without its unit.
     *
     * @param massKg in kg
     * @return in the type's unit
     */
    public String massNumber(double massKg) {
        return fixed(massUnit().fromKg(massKg), massUnit() == MassUnit.TONNE ? 3 : 0);
    }

    /**
     * A mass that is given, to work with.
     *
     * @param massKg in kg
     * @return in the type's unit, with the unit; with two decimals where it is not whole
     */
    public String given(double massKg) {
        double mass = massUnit().fromKg(massKg);
        boolean whole = massUnit() == MassUnit.TONNE || Math.abs(mass - Math.rint(mass)) < WHOLE;
        return whole ? mass(massKg) : fixed(mass, 2) + " " + massUnit().symbol();
    }

    private MassUnit massUnit() {
        return type.geometry().units().mass();
    }

    /**
     * The unit of masses.
     *
     * @return its symbol
     */
    public String massUnitName() {
        return massUnit().symbol();
    }

    /**
     * The unit of arms.
     *
     * @return its symbol
     */
    public String armUnitName() {
        return length().symbol();
    }

    /**
     * The unit of moments.
     *
     * @return symbols of mass and length
     */
    public String momentUnitName() {
        return massUnit().symbol() + " " + length().symbol();
    }

    private LengthUnit length() {
        return type.geometry().units().length();
    }

    /**
     * An arm.
     *
     * @param armM in m
     * @return in the type's unit, with the unit
     */
    public String arm(double armM) {
        return armNumber(armM) + " " + length().symbol();
    }

    /**
     * An arm without its unit.
     *
     * @param armM in m
     * @return in the type's unit
     */
    public String armNumber(double armM) {
        return fixed(length().fromM(armM), armDecimals());
    }

    /** An arm with two places more, to divide by. */
    String fineArmNumber(double armM) {
        return fixed(length().fromM(armM), armDecimals() + 2);
    }

    private int armDecimals() {
        return switch (length()) {
            case M, FT -> 3;
            case CM, IN -> 2;
            case MM -> 0;
        };
    }

    /**
     * A moment without its unit.
     *
     * @param momentKgM in kg·m
     * @return in the type's units, whole
     */
    public String momentNumber(double momentKgM) {
        return fixed(length().fromM(massUnit().fromKg(momentKgM)), 0);
    }

    /**
     * A CG.
     *
     * @param value % MAC, m or index
     * @param measure which of them
     * @return with its unit
     */
    public String cg(double value, CgMeasure measure) {
        return switch (measure) {
            case PERCENT_MAC -> fixed(value, 2) + " % MAC";
            case ARM -> arm(value);
            case INDEX -> fixed(value, 2) + " index";
        };
    }

    /**
     * In what the type's users give a CG.
     *
     * @return % MAC or arm
     */
    public CgMeasure usualMeasure() {
        return type.geometry().units().cg() == CgForm.ARM ? CgMeasure.ARM : CgMeasure.PERCENT_MAC;
    }

    /**
     * A trim.
     *
     * @param trimUnits nose-up positive
     * @param stepUnits to which step it is shown
     * @return as {@code 0.2 UP}
     */
    public String trim(double trimUnits, double stepUnits) {
        TrimUnit unit = type.trimUnit(Phase.TAKEOFF).orElse(TrimUnit.UNITS);
        return FindingText.trim(trimUnits, stepUnits, unit);
    }

    public static String fixed(double value, int decimals) {
        String digits = String.format(Locale.ROOT, "%,." + decimals + "f", value);
        boolean zero = digits.chars().noneMatch(c -> c >= '1' && c <= '9');
        return zero ? digits.replace("-", "") : digits;
    }

    /**
     * Points: without decimals where there are none.
     *
     * @param points points
     * @return at most two decimals
     */
    public static String points(double points) {
        String digits = fixed(points, 2);
        return digits.replaceFirst("\\.?0+$", "");
    }
}
