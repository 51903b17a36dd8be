package org.steelyard.model.trim;

/** Where a trim scale comes from, and so how far to trust it. */
public enum TrimBasis {
    /** The documents of the type. */
    DOCUMENT("document"),
    /** Fitted to recorded settings. */
    EVIDENCE("evidence"),
    /** Estimated from the balance of moments; every output says so. */
    ESTIMATE("estimate");

    private final String label;

    TrimBasis(String label) {
        this.label = label;
    }

    /**
     * How it is called on outputs and in files.
     *
     * @return one word
     */
    public String label() {
        return label;
    }
}
