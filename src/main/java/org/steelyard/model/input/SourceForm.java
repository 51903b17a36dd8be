package org.steelyard.model.input;

/** What each row of a source is. */
public enum SourceForm {
    /** A flight with all that is said of it. */
    FLIGHTS("flights"),
    /** One item of the load of a flight, which itself stands in another source. */
    ITEMS("items");

    private final String key;

    SourceForm(String key) {
        this.key = key;
    }

    /**
     * How the form is written in a heading map.
     *
     * @return one word in lower case
     */
    public String key() {
        return key;
    }
}
