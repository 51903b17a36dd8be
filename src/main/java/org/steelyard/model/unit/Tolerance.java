package org.steelyard.model.unit;

/**
 * What counts as on a limit, for every comparison with one. A point on a limit is inside; as sums and conversions of
 * units leave the last digits of a figure to chance, what is beyond a limit by no more than this is on it. Each figure
 * is far above the rounding of any sum of masses or moments and far below anything that a scale or a load sheet shows.
 *
 * <p>All masses in kg, CGs in % MAC, arms in m.
 */
public final class Tolerance {

    /** Of a mass: a hundredth of a gram. */
    public static final double MASS_KG = 1e-5;

    /** Of a CG in % MAC: a thousand-millionth of the chord. */
    public static final double CG_PERCENT_MAC = 1e-7;

    /** Of what else is held against a limit, in its own unit: trim units, kg/m, kg/m², persons. */
    public static final double OTHER = 1e-6;

    private Tolerance() {}

    /**
     * Whether a room is less than none.
     *
     * @param room room to a limit in the unit of the quantity, negative outside
     * @param quantity what it measures
     * @return true beyond the tolerance only
     */
    public static boolean isOutside(double room, Quantity quantity) {
        return switch (quantity) {
            case MASS -> room < -MASS_KG;
            case CG -> room < -CG_PERCENT_MAC;
            case COUNT, PERSONS, TRIM, TRIM_DEGREES, RUNNING_LOAD, AREA_LOAD, NONE -> room < -OTHER;
        };
    }

    /**
     * Whether a mass is above another.
     *
     * @param massKg mass in kg
     * @param limitKg the other in kg
     * @return true beyond the tolerance only
     */
    public static boolean isAboveKg(double massKg, double limitKg) {
        return massKg > limitKg + MASS_KG;
    }

    /**
     * Whether a mass is below another.
     *
     * @param massKg mass in kg
     * @param limitKg the other in kg
     * @return true beyond the tolerance only
     */
    public static boolean isBelowKg(double massKg, double limitKg) {
        return massKg < limitKg - MASS_KG;
    }

    /**
     * Whether a mass lies in a range, ends included.
     *
     * @param massKg mass in kg
     * @param fromKg least mass in kg
     * @param toKg greatest mass in kg
     * @return true inside and on either end
     */
    public static boolean isWithinKg(double massKg, double fromKg, double toKg) {
        return !isBelowKg(massKg, fromKg) && !isAboveKg(massKg, toKg);
    }

    /**
     * Whether a CG lies behind another.
     *
     * @param cgPercentMac CG in % MAC
     * @param limitPercentMac the other in % MAC
     * @return true beyond the tolerance only
     */
    public static boolean isAft(double cgPercentMac, double limitPercentMac) {
        return cgPercentMac > limitPercentMac + CG_PERCENT_MAC;
    }

    /**
     * Whether a CG lies ahead of another.
     *
     * @param cgPercentMac CG in % MAC
     * @param limitPercentMac the other in % MAC
     * @return true beyond the tolerance only
     */
    public static boolean isAhead(double cgPercentMac, double limitPercentMac) {
        return cgPercentMac < limitPercentMac - CG_PERCENT_MAC;
    }

    /**
     * The moment that the tolerance of CG comes to.
     *
     * @param massKg mass of the aircraft in kg
     * @param chordM length of the mean aerodynamic chord in m
     * @return moment in kg·m
     */
    public static double momentKgM(double massKg, double chordM) {
        return CG_PERCENT_MAC / 100 * chordM * massKg;
    }
}
