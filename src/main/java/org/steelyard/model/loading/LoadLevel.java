package org.steelyard.model.loading;

/** How much an input gives of a load. */
public enum LoadLevel {
    /** Every zone and hold. */
    DETAIL("detail"),
    /** Passengers by zone, baggage and cargo in total. */
    ZONES("zones, holds in total"),
    /** Baggage and cargo by hold, passengers in total. */
    HOLDS("holds, passengers in total"),
    /** Both in total. */
    TOTALS("totals"),
    /** The zero-fuel state alone, with fuel. */
    ZERO_FUEL_GIVEN("zero fuel given"),
    /** The take-off state alone. */
    TAKEOFF_GIVEN("take-off given");

    private final String label;

    LoadLevel(String label) {
        this.label = label;
    }

    /**
     * How the level is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
