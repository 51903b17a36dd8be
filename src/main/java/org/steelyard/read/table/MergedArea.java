package org.steelyard.read.table;

/**
 * Cells of a sheet that are merged into one: its value is the first cell's.
 *
 * @param firstRow first row, from 1
 * @param lastRow last row
 * @param firstColumn first column, from 0
 * @param lastColumn last column
 */
public record MergedArea(long firstRow, long lastRow, int firstColumn, int lastColumn) {

    public boolean covers(long row, int column) {
        return row >= firstRow && row <= lastRow && column >= firstColumn && column <= lastColumn;
    }

    public boolean begins(long row, int column) {
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
