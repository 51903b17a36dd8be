package org.steelyard.model.unit;

/**
 * Units of length, each with its exact factor to m: 1 in = 0.0254 m, 1 ft = 0.3048 m (international yard and pound
 * agreement of 1959; NIST SP 811, appendix B).
 */
public enum LengthUnit {
    /** Metre. */
    M("m", 1, 1),
    /** Centimetre. */
    CM("cm", 1, 100),
    /** Millimetre. */
    MM("mm", 1, 1000),
    /** International inch. */
    IN("in", 0.0254, 1),
    /** International foot. */
    FT("ft", 0.3048, 1);

    private final String symbol;
    private final double factor;
    private final double divisor;

    LengthUnit(String symbol, double factor, double divisor) {
        this.symbol = symbol;
        this.factor = factor;
        this.divisor = divisor;
    }

    /**
     * How the unit is written.
     *
     * @return its symbol
     */
    public String symbol() {
        return symbol;
    }

    /**
     * From this unit to m.
     *
     * @param length in this unit
     * @return length in m
     */
    public double toM(double length) {
        return length * factor / divisor;
    }

    /**
     * From m to this unit.
     *
     * @param lengthM in m
     * @return length in this unit
     */
    public double fromM(double lengthM) {
        return lengthM * divisor / factor;
    }
}
