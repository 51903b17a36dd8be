package org.steelyard.model.input;

/** Why an input row was passed over: it is no flight of its own, and no fault either. */
public enum SkipKind {
    /** A row that sums up others. */
    TOTALS("totals"),
    /** The headings once more. */
    HEADINGS("headings-again"),
    /** A title across the columns. */
    TITLE("title"),
    /** A rejected row that stands put right in another file. */
    PUT_RIGHT("put-right"),
    /** A flight that stands elsewhere cell for cell. */
    REPEATED("repeated");

    private final String code;

    SkipKind(String code) {
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
