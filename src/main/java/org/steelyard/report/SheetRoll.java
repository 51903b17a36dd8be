package org.steelyard.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;

/**
 * A streamed sheet without end: past the last row that the format has it goes on with the next sheet, under the same
 * headings. Rows leave memory as they are written.
 */
final class SheetRoll {

    private static final int NOTE_ROW = 0;
    private static final int HEADING_ROW = 1;
    private static final int FIRST_ROW = 2;
    private static final float ROOM_FOR_FILTERS = 16;

    private final SXSSFWorkbook book;
    private final WorkbookStyles styles;
    private final WorkbookText text;
    private final SheetLayout layout;
    private final int maxRows;
    private final List<SXSSFSheet> parts = new ArrayList<>();
    private final List<Integer> ends = new ArrayList<>();
    private final Optional<CellStyle> blank;
    private SXSSFSheet sheet;
    private int nextRow;
    private long rows;

    SheetRoll(SXSSFWorkbook book, WorkbookStyles styles, WorkbookText text, SheetLayout layout, int maxRows) {
        if (maxRows <= FIRST_ROW) {
            throw new IllegalArgumentException("a sheet needs more than its headings");
        }
        this.book = book;
        this.styles = styles;
        this.text = text;
        this.layout = layout;
        this.maxRows = maxRows;
        blank = Optional.of(styles.blank);
        startPart();
    }

    SheetLayout layout() {
        return layout;
    }

    /** How many rows were written below the headings, on all sheets. */
    long rows() {
        return rows;
    }

    /** How many sheets there are. */
    int parts() {
        return parts.size();
    }

    List<String> names() {
        return parts.stream().map(SXSSFSheet::getSheetName).toList();
    }

    /** Makes sure that so many rows come to stand on one sheet. */
    void keepTogether(int count) {
        if (nextRow > FIRST_ROW && nextRow + count > maxRows) {
            startPart();
        }
    }

    /** The next row. */
    SheetRow next() {
        rows++;
        return nextHeading();
    }

    /** The next row, which is no row of its own but says what follows. */
    SheetRow nextHeading() {
        keepTogether(1);
        return new SheetRow(createRow(nextRow++), text, blank);
    }

    /** Sets filters and pages, when all rows are written and the sheets are in order. */
    void finish(WorkbookPage page, String whenEmpty) {
        if (rows == 0) {
            new SheetRow(createRow(nextRow++), text).label(whenEmpty, styles.note);
        }
        ends.add(nextRow - 1);
        for (int part = 0; part < parts.size(); part++) {
            finishPart(parts.get(part), ends.get(part), page);
        }
    }

    private void finishPart(Sheet part, int lastRow, WorkbookPage page) {
        int lastColumn = layout.columns().size() - 1;
        part.setAutoFilter(new CellRangeAddress(HEADING_ROW, lastRow, 0, lastColumn));
        part.setRepeatingRows(new CellRangeAddress(HEADING_ROW, HEADING_ROW, -1, -1));
        if (layout.pagesWide() > 1) {
            part.setRepeatingColumns(new CellRangeAddress(-1, -1, 0, layout.frozenColumns() - 1));
            book.setPrintArea(book.getSheetIndex(part), 0, lastColumn, HEADING_ROW, lastRow);
        }
        page.setUp(part, layout.pagesWide(), 0);
    }

    private void startPart() {
        if (!parts.isEmpty()) {
            ends.add(nextRow - 1);
            flush();
        }
        String name = parts.isEmpty() ? layout.name() : layout.name() + " " + (parts.size() + 1);
        sheet = book.createSheet(name);
        parts.add(sheet);
        widths();
        sheet.setDisplayGridlines(false);
        sheet.createFreezePane(layout.frozenColumns(), FIRST_ROW);
        headings();
        nextRow = FIRST_ROW;
    }

    private void flush() {
        try {
            sheet.flushRows();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void widths() {
        sheet.setDefaultColumnWidth(14);
        for (int column = 0; column < layout.columns().size(); column++) {
            sheet.setColumnWidth(column, layout.columns().get(column).widthChars() * 256);
        }
    }

    private void headings() {
        String note = layout.note() + (parts.size() > 1 ? " Continued from the sheet before." : "");
        Row noteRow = createRow(NOTE_ROW);
        noteRow.setHeightInPoints(20);
        new SheetRow(noteRow, text).label(note, styles.note);
        Row headingRow = createRow(HEADING_ROW);
        headingRow.setHeightInPoints(ROOM_FOR_FILTERS + 12.75f * layout.headingLines());
        SheetRow headings = new SheetRow(headingRow, text);
        for (SheetColumn column : layout.columns()) {
            headings.label(column.heading(), column.numbers() ? styles.headingRight : styles.heading);
        }
    }

    /** The library wraps a full disk into an exception that does not say so. */
    private Row createRow(int index) {
        try {
            return sheet.createRow(index);
        } catch (IllegalStateException e) {
            if (e.getCause() instanceof IOException cause) {
                throw new UncheckedIOException(cause);
            }
            throw e;
        }
    }
}
