package org.steelyard.read;

import java.util.Optional;

/**
 * Cells of a sheet that are merged into one: its value is the first cell's.
 *
 * @param firstRow first row, from 1
 * @param lastRow last row
 * @param firstColumn first column, from 0
 * @param lastColumn last column
 */
record MergedArea(long firstRow, long lastRow, int firstColumn, int lastColumn) {

    /** The area of a reference such as B2:D5. */
    static Optional<MergedArea> of(String reference) {
        int colon = reference.indexOf(':');
        if (colon < 0) {
            return Optional.empty();
        }
        String first = reference.substring(0, colon);
        String last = reference.substring(colon + 1);
        MergedArea area = new MergedArea(rowOf(first), rowOf(last), XlsxRows.columnOf(first), XlsxRows.columnOf(last));
        boolean sound = area.firstRow >= 1
                && area.lastRow >= area.firstRow
                && area.firstColumn >= 0
                && area.lastColumn >= area.firstColumn;
        return sound ? Optional.of(area) : Optional.empty();
    }

    private static long rowOf(String reference) {
        int start = 0;
        while (start < reference.length() && reference.charAt(start) > '9') {
            start++;
        }
        return XlsxCells.wholeNumber(reference.substring(start));
    }

    boolean covers(long row, int column) {
        return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
    }

    boolean begins(long row, int column) {
        return row == firstRow && column == firstColumn;
    }

    @Override
    public String toString() {
        return columnName(firstColumn) + firstRow + ":" + columnName(lastColumn) + lastRow;
    }

    /** A column as sheets name it, from A. */
    static String columnName(int column) {
        StringBuilder name = new StringBuilder();
        for (int rest = column + 1; rest > 0; rest = (rest - 1) / 26) {
            name.insert(0, (char) ('A' + (rest - 1) % 26));
        }
        return name.toString();
    }
}
