package org.steelyard.model.type;

/** Which crew. */
public enum CrewRole {
    /** Flight crew. */
    FLIGHT("flight crew"),
    /** Cabin crew. */
    CABIN("cabin crew");

    private final String label;

    CrewRole(String label) {
        this.label = label;
    }

    /**
     * How the role is called on outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
