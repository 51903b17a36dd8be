package org.steelyard.check.result;

/** The verdict on one flight. */
public enum Status {
    /** Inside every limit and close to none. */
    CLEAN("clean"),
    /** Inside every limit, close to at least one. */
    MARGINAL("marginal"),
    /** Outside at least one limit. */
    BREACHED("breached");

    private final String label;

    Status(String label) {
        this.label = label;
    }

    /**
     * How the verdict is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
