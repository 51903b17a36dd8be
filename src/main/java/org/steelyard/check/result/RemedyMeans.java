package org.steelyard.check.result;

/** By what a flight can be put right. */
public enum RemedyMeans {
    /** Load moved between holds or between zones. */
    MOVE("move"),
    /** Load left behind, beside what is moved. */
    LEAVE("leave behind"),
    /** Ballast in holds, beside what is moved. */
    BALLAST("ballast"),
    /** More or less fuel, or the same fuel in other tanks, with the same burn. */
    FUEL("fuel"),
    /** Nothing helps. */
    NONE("none");

    private final String label;

    RemedyMeans(String label) {
        this.label = label;
    }

    /**
     * How the means is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
