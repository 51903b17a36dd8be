package org.steelyard.analyse.figure;

/** What statistics are made of. */
public enum Measure {
    /** CG at take-off. */
    TAKEOFF_CG("take-off CG", "% MAC", false),
    /** Trim for take-off at full precision, nose-up positive. */
    TAKEOFF_TRIM("take-off trim", "units", true),
    /** CG at zero fuel. */
    ZERO_FUEL_CG("zero-fuel CG", "% MAC", false),
    /** CG at landing. */
    LANDING_CG("landing CG", "% MAC", false);

    private final String label;
    private final String unit;
    private final boolean byFlaps;

    Measure(String label, String unit, boolean byFlaps) {
        this.label = label;
        this.unit = unit;
        this.byFlaps = byFlaps;
    }

    /** Its name in words. */
    public String label() {
        return label;
    }

    /** The unit of its values. */
    public String unit() {
        return unit;
    }

    /** Whether values of different flap settings, or thrust ratings, must not be mixed: each has a scale of its own. */
    public boolean byFlaps() {
        return byFlaps;
    }
}
