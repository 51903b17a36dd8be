package org.steelyard.report.book;

import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFRow;
import org.apache.poi.xssf.usermodel.XSSFSheet;

/** A small sheet that is laid out by hand, row under row. */
public final class SheetGrid {

    private final XSSFSheet sheet;
    private final WorkbookText text;
    private int next;

    public SheetGrid(XSSFSheet sheet, WorkbookText text) {
        this.sheet = sheet;
        this.text = text;
        sheet.setDisplayGridlines(false);
    }

    public XSSFSheet sheet() {
        return sheet;
    }

    public void widths(int... chars) {
        for (int column = 0; column < chars.length; column++) {
            sheet.setColumnWidth(column, chars[column] * 256);
        }
    }

    /** Index of the row that comes next. */
    public int position() {
        return next;
    }

    /** Goes on at a row. */
    public void moveTo(int row) {
        next = row;
    }

    public void gap(float points) {
        newRow().setHeightInPoints(points);
    }

    /** The next row. */
    public SheetRow row() {
        return new SheetRow(newRow(), text);
    }

    /** The next row, of a height of its own. */
    public SheetRow row(float points) {
        XSSFRow row = newRow();
        row.setHeightInPoints(points);
        return new SheetRow(row, text);
    }

    private XSSFRow newRow() {
        int index = next++;
        XSSFRow row = sheet.getRow(index);
        return row == null ? sheet.createRow(index) : row;
    }

    /** Joins cells of the row written last; all of them get the style of the first. */
    public void join(int from, int to) {
        XSSFRow row = sheet.getRow(next - 1);
        Cell first = row.getCell(from);
        CellStyle style = first == null ? null : first.getCellStyle();
        for (int column = from; column <= to; column++) {
            Cell cell = row.getCell(column) == null ? row.createCell(column) : row.getCell(column);
            if (style != null) {
                cell.setCellStyle(style);
            }
        }
        sheet.addMergedRegion(new CellRangeAddress(next - 1, next - 1, from, to));
    }
}
