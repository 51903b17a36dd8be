package org.steelyard.model.policy;

/**
 * Which row stands where several are of one flight but differ in other cells, and which load sheet where a student
 * hands in several for one exercise.
 */
public enum DuplicateRule {
    /** The first that is read; the others are rejected. */
    FIRST("first stands"),
    /** The last that is read; the others are rejected. */
    LAST("last stands"),
    /** None; all are rejected. */
    NONE("none stands"),
    /** All, each as a flight of its own; they are told of. */
    ALL("all count");

    private final String label;

    DuplicateRule(String label) {
        this.label = label;
    }

    /**
     * How the rule is written.
     *
     * @return its words
     */
    public String label() {
        return label;
    }
}
