package org.steelyard.read.table;

/** What a source says of a cell beyond its text; in text files every cell is text. */
public enum CellKind {
    /** Text as it stands. */
    TEXT,
    /** A stored number: a decimal point, perhaps an exponent, whatever the map says of decimal commas. */
    NUMBER,
    /** A stored number that its cell shows as a percentage; the text is the number as stored, 0.25 for 25 %. */
    PERCENTAGE,
    /** A stored date, as year-month-day, with the time behind a T where there is one. */
    DATE,
    /** An error such as #N/A. */
    ERROR,
    /** A place under a merged cell, whose value counts for its first place only; the text is the merged area. */
    COVERED,
    /** A formula whose result the file does not hold. */
    UNCALCULATED;

    /** Whether the text is a stored number. */
    public boolean isNumber() {
        return this == NUMBER || this == PERCENTAGE;
    }
}
