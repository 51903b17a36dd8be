package org.steelyard.report.book;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;

/** Fills a row from left to right. Text is always written as text, never as a formula. */
public final class SheetRow {

    /** Days from the format's day 0 to 1970-01-01; right from 1 March 1900 on, as it counts a 29 February 1900. */
    private static final int DAY_OF_EPOCH = 25569;

    private static final float LINE_POINTS = 12.75f;
    private static final float MAX_HEIGHT_POINTS = 409;
    private static final LocalDate FIRST_DATE = LocalDate.of(1900, 3, 1);
    private static final LocalDate LAST_DATE = LocalDate.of(9999, 12, 31);

    private final RowCells cells;
    private final WorkbookText text;
    private final Optional<CellStyle> blank;
    private int column;

    /** A row whose blank cells stay away. */
    SheetRow(Row row, WorkbookText text) {
        this(new RowCells.InMemory(row), text, Optional.empty());
    }

    /** A row whose blank cells have a style of their own. */
    SheetRow(RowCells cells, WorkbookText text, Optional<CellStyle> blank) {
        this.cells = cells;
        this.text = text;
        this.blank = blank;
    }

    /** Makes room for so many lines of text, within what the format allows for a row. */
    public SheetRow lines(int count) {
        if (count > 1) {
            cells.height(Math.min(MAX_HEIGHT_POINTS, 2 + LINE_POINTS * count));
        }
        return this;
    }

    public SheetRow at(int newColumn) {
        column = newColumn;
        return this;
    }

    public SheetRow skip(int count) {
        for (int i = 0; i < count; i++) {
            if (blank.isPresent()) {
                cells.blank(column, blank.get());
            }
            column++;
        }
        return this;
    }

    /** Text from inputs; nothing is written for an empty one. */
    public SheetRow data(String value, WorkbookStyles.TextStyle style) {
        if (value.isEmpty()) {
            return skip(1);
        }
        String shown = text.cell(value);
        return string(shown, style.styleFor(shown));
    }

    /** Our own words. */
    public SheetRow label(String words, CellStyle style) {
        return string(text.cell(words), style);
    }

    private SheetRow string(String shown, CellStyle style) {
        cells.text(column++, shown, style);
        return this;
    }

    public SheetRow number(double value, CellStyle style) {
        cells.number(column++, value, style);
        return this;
    }

    /** A count; a cell holds whole numbers exactly up to 2^53. */
    public SheetRow number(long count, CellStyle style) {
        return number((double) count, style);
    }

    public SheetRow number(OptionalDouble value, CellStyle style) {
        return value.isPresent() ? number(value.getAsDouble(), style) : skip(1);
    }

    /** A date as a date; as text where the format has no number for it. */
    public SheetRow date(LocalDate date, WorkbookStyles styles) {
        if (date.isBefore(FIRST_DATE) || date.isAfter(LAST_DATE)) {
            return data(date.toString(), styles.text);
        }
        return number(date.toEpochDay() + DAY_OF_EPOCH, styles.date);
    }
}
