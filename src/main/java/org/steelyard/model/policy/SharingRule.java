package org.steelyard.model.policy;

/** How totals are shared out among zones and holds. */
public enum SharingRule {
    /** Each place by its capacity. */
    BY_CAPACITY("by capacity"),
    /** The foremost place first, until full. */
    FRONT_FIRST("front first"),
    /** The rearmost place first, until full. */
    BACK_FIRST("back first");

    private final String label;

    SharingRule(String label) {
        this.label = label;
    }

    /**
     * How the rule is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
