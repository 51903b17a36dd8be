package org.steelyard.report.text;

/**
 * A column of an output.
 *
 * @param name its name
 * @param kind what its cells are; a cell may be missing in any
 */
public record OutputColumn(String name, Kind kind) {

    /** What cells are. */
    public enum Kind {
        /** Texts. */
        TEXT,
        /** Whole numbers. */
        WHOLE,
        /** Numbers. */
        NUMBER
    }
}
