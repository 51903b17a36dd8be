package org.steelyard.model.input;

/** What it means that a cell of a load column is blank. */
public enum BlankLoad {
    /** There is nothing in the place. */
    NONE("none"),
    /** The figure is missing, and the row cannot be used. */
    MISSING("missing"),
    /** Nobody has said; it is counted as nothing, and the flight has a note. */
    NOT_SAID("");

    private final String label;

    BlankLoad(String label) {
        this.label = label;
    }

    /**
     * How the meaning is written in a heading map.
     *
     * @return its word; blank where nobody has said
     */
    public String label() {
        return label;
    }
}
