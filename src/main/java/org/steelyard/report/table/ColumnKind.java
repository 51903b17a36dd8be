package org.steelyard.report.table;

/** What a column of a table holds; its alignment follows from it. */
public enum ColumnKind {
    /** A short name that stays on one line, as a registration. */
    NAME,
    /** Words or data. */
    TEXT,
    /** A word of verdict, with its mark. */
    STATUS,
    /** A code, as programs read it. */
    CODE,
    DATE,
    COUNT,
    /** A part of a whole, from 0 to 1. */
    SHARE,
    MASS,
    /** A place on the mean chord, or a way along it, in % MAC. */
    PERCENT_MAC,
    /** A trim, nose-up positive. */
    TRIM,
    /** Any other number, in the unit of its column. */
    NUMBER;

    /** Whether its cells stand to the right, as numbers do. */
    public boolean isNumber() {
        return switch (this) {
            case NAME, TEXT, STATUS, CODE, DATE -> false;
            case COUNT, SHARE, MASS, PERCENT_MAC, TRIM, NUMBER -> true;
        };
    }
}
