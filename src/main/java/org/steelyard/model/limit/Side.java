package org.steelyard.model.limit;

/** Which of an envelope's two limit lines. */
public enum Side {
    /** The forward limit: a CG ahead of it is outside. */
    FORWARD("forward"),
    /** The aft limit: a CG behind it is outside. */
    AFT("aft");

    private final String label;

    Side(String label) {
        this.label = label;
    }

    /**
     * How the side is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
