package org.steelyard.grade.mark;

/** How an item fared. */
public enum Outcome {
    /** Within the tolerance of the scheme. */
    RIGHT("right"),
    /** Wrong, but right from the student's own earlier figures or by a slip made before. */
    FOLLOWS("follows on"),
    /** Wrong. */
    WRONG("wrong"),
    /** Nothing stands there. */
    MISSING("missing"),
    /** What stands there is no figure. */
    UNREADABLE("unreadable"),
    /** The exercise does not give an answer: the item is not marked. */
    NOT_ASKED("not asked");

    private final String label;

    Outcome(String label) {
        this.label = label;
    }

    /**
     * The outcome in a word or two.
     *
     * @return its name on pages
     */
    public String label() {
        return label;
    }
}
