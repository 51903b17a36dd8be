package org.steelyard.report.output.book;

import org.apache.poi.ss.SpreadsheetVersion;

/**
 * How much a sheet and a cell can hold.
 *
 * @param rows rows of a sheet, headings included
 * @param columns columns of a sheet
 * @param cellChars characters of a cell
 */
record WorkbookLimits(int rows, int columns, int cellChars) {

    /** The limits of the file format. */
    static final WorkbookLimits FORMAT = new WorkbookLimits(
            SpreadsheetVersion.EXCEL2007.getMaxRows(),
            SpreadsheetVersion.EXCEL2007.getMaxColumns(),
            SpreadsheetVersion.EXCEL2007.getMaxTextLength());
}
