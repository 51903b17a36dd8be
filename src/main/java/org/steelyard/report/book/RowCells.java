package org.steelyard.report.book;

import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;

/** Where the cells of one row go, from left to right. */
interface RowCells {

    /** Sets the height of the row; before its first cell. */
    void height(float points);

    void blank(int column, CellStyle style);

    void text(int column, String shown, CellStyle style);

    void number(int column, double value, CellStyle style);

    /** A row of a sheet that is held in memory. */
    record InMemory(Row row) implements RowCells {

        @Override
        public void height(float points) {
            row.setHeightInPoints(points);
        }

        @Override
        public void blank(int column, CellStyle style) {
            row.createCell(column).setCellStyle(style);
        }

        @Override
        public void text(int column, String shown, CellStyle style) {
            blank(column, style);
            row.getCell(column).setCellValue(shown);
        }

        @Override
        public void number(int column, double value, CellStyle style) {
            blank(column, style);
            row.getCell(column).setCellValue(value);
        }
    }
}
