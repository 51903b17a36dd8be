package org.steelyard.model.type;

/** Categories of passengers that schemes of standard masses tell apart. */
public enum PassengerCategory {
    /** Adult man. */
    MALE("male"),
    /** Adult woman. */
    FEMALE("female"),
    /** Adult of either sex, where a scheme has one figure for all. */
    ADULT("adult"),
    /** Child from 2 to under 12 years, or an infant on a seat of its own. */
    CHILD("child"),
    /** Infant under 2 years on a lap: takes no seat. */
    INFANT("infant");

    private final String label;

    PassengerCategory(String label) {
        this.label = label;
    }

    /**
     * How the category is called on inputs and outputs.
     *
     * @return its name in words
     */
    public String label() {
        return label;
    }
}
