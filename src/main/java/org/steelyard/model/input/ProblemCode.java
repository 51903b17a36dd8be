package org.steelyard.model.input;

/** Why an input cannot be used. */
public enum ProblemCode {
    /** A value that must be there is not. */
    MISSING("missing"),
    /** Not a number. */
    NOT_A_NUMBER("not-a-number"),
    /** Not a whole number. */
    NOT_WHOLE("not-whole"),
    /** A number outside what makes sense. */
    OUT_OF_RANGE("out-of-range"),
    /** Not a date. */
    NOT_A_DATE("not-a-date"),
    /** A unit that is missing, unknown or of another kind. */
    UNKNOWN_UNIT("unknown-unit"),
    /** A name that the configuration does not know. */
    UNKNOWN_NAME("unknown-name"),
    /** Two values that contradict each other. */
    CONTRADICTION("contradiction"),
    /** A row that does not fit its headings. */
    MALFORMED_ROW("malformed-row"),
    /** A cell that holds an error or a formula without a stored result. */
    BAD_CELL("bad-cell"),
    /** A heading that is missing, blank or there twice. */
    BAD_HEADING("bad-heading"),
    /** A flight that stands in another row, too, with other figures. */
    DUPLICATE("duplicate-flight"),
    /** A file that cannot be read, or is empty. */
    UNREADABLE("unreadable");

    private final String code;

    ProblemCode(String code) {
        this.code = code;
    }

    /**
     * The kind's short name on outputs.
     *
     * @return lower-case words joined by hyphens
     */
    public String code() {
        return code;
    }
}
