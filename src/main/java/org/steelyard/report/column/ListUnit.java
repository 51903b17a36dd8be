package org.steelyard.report.column;

/** What the numbers of a column are in. */
public enum ListUnit {
    /** No unit, or none of its own. */
    NONE(""),
    /** Mass. */
    KG("kg"),
    /** Centre of gravity. */
    PERCENT_MAC("% MAC"),
    /** Moment. */
    KG_M("kg·m"),
    /** Index of the type. */
    INDEX("index units"),
    /** Trim, nose-up positive. */
    TRIM("units"),
    /** Chance, where 1 is certain. */
    CHANCE("from 0 to 1"),
    /** Adults of standard mass. */
    ADULTS("adults"),
    /** That of the type's users, which stands beside it. */
    BESIDE("that of `unit`"),
    /** That of the program, which stands beside it. */
    INSIDE("that of `unit_si`");

    private final String label;

    ListUnit(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    /** What follows the title of a column on a sheet. */
    String ofTitle() {
        return switch (this) {
            case NONE, BESIDE, INSIDE -> "";
            case KG, PERCENT_MAC, KG_M, INDEX, TRIM, CHANCE, ADULTS -> ", " + label;
        };
    }
}
