package org.steelyard.model;

/** What the numbers of a trim scale are. */
public enum TrimUnit {
    /** Units of the type's trim indicator. */
    UNITS(""),
    /** Degrees of stabilizer angle. */
    DEGREES("°");

    private final String symbol;

    TrimUnit(String symbol) {
        this.symbol = symbol;
    }

    /**
     * What follows a number.
     *
     * @return the degree sign, or nothing for units
     */
    public String symbol() {
        return symbol;
    }
}
