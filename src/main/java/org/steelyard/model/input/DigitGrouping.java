package org.steelyard.model.input;

/** What a source writes between groups of three digits before the decimal sign, as in {@code 62,700}. */
public enum DigitGrouping {
    /** Nothing. */
    NONE("none", ""),
    /** A point. */
    POINT("point", "."),
    /** A comma. */
    COMMA("comma", ","),
    /** A blank, also one that does not break or is narrow. */
    BLANK("blank", " \u00A0\u2009\u202F"),
    /** An apostrophe, straight or raised. */
    APOSTROPHE("apostrophe", "'\u2019");

    private final String label;
    private final String signs;

    DigitGrouping(String label, String signs) {
        this.label = label;
        this.signs = signs;
    }

    /**
     * How it is written in a heading map.
     *
     * @return one word
     */
    public String label() {
        return label;
    }

    /**
     * Whether a sign is one that stands between groups.
     *
     * @param sign any character
     * @return true if it is
     */
    public boolean isSign(char sign) {
        return signs.indexOf(sign) >= 0;
    }
}
