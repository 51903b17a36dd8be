package org.steelyard.read;

import java.util.List;

/** One row of a source as it stands there, not yet understood. Immutable. */
public final class RawRow {

    private static final CellKind[] ALL_TEXT = {};

    private final long number;
    private final String[] cells;
    private final CellKind[] kinds;

    private RawRow(long number, String[] cells, CellKind[] kinds) {
        this.number = number;
        this.cells = cells;
        this.kinds = kinds;
    }

    /** A row of text; the array is handed over. */
    static RawRow ofText(long number, String... cells) {
        return new RawRow(number, cells, ALL_TEXT);
    }

    /** A row of typed cells; the arrays are handed over and equally long. */
    static RawRow of(long number, String[] cells, CellKind[] kinds) {
        return new RawRow(number, cells, kinds);
    }

    /** The number of its first line in a text file, or of the row in a sheet, from 1. */
    public long number() {
        return number;
    }

    /** Its cells as they stand there. */
    public List<String> cells() {
        return List.of(cells);
    }

    int size() {
        return cells.length;
    }

    /** A cell, blank where the row ends before it. */
    String cell(int index) {
        return index < cells.length ? cells[index] : "";
    }

    CellKind kind(int index) {
        return index < kinds.length ? kinds[index] : CellKind.TEXT;
    }

    /** Whether there is content at or after a place. */
    boolean isBlankFrom(int index) {
        for (int i = index; i < cells.length; i++) {
            if (!Blanks.isBlank(cells[i])) {
                return false;
            }
        }
        return true;
    }

    boolean isBlank() {
        return isBlankFrom(0);
    }
}
