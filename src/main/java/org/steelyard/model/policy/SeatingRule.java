package org.steelyard.model.policy;

/** How passengers take the seats of a zone. */
public enum SeatingRule {
    /** Any seats, each set of seats as likely as any other. */
    RANDOM("random"),
    /** From the front: the window seats of all rows, then the seats at the aisle, then those between. */
    WINDOW_AISLE_MIDDLE("window-aisle-middle");

    private final String label;

    SeatingRule(String label) {
        this.label = label;
    }

    /**
     * How the rule is called in the policy.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
