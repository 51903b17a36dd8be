package org.steelyard.model.loading;

/** The parts of a load that an input may give in total, so that where they lie is assumed. */
public enum LoadPart {
    /** Passengers in the zones of the cabin. */
    PASSENGERS("passengers"),
    /** Baggage and cargo in the holds. */
    HOLDS("holds"),
    /** Fuel in the tanks. */
    FUEL("fuel");

    private final String label;

    LoadPart(String label) {
        this.label = label;
    }

    /**
     * How the part is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
