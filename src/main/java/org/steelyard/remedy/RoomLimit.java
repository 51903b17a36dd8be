package org.steelyard.remedy;

/** What ends the room at a place. */
public enum RoomLimit {
    /** The hold's or floor's own limit. */
    PLACE("its own limit"),
    /** The seats of the zone. */
    SEATS("seats"),
    /** A group of places. */
    GROUP("a group of places"),
    /** A limit of mass. */
    MASS("mass"),
    /** A limit of CG. */
    CG("CG"),
    /** The trim scale or its band. */
    TRIM("trim");

    private final String label;

    RoomLimit(String label) {
        this.label = label;
    }

    /**
     * How the limit is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
