package org.steelyard.report.column;

import static org.steelyard.report.column.ListColumn.text;
import static org.steelyard.report.column.ListColumn.whole;

import java.util.stream.Stream;
import org.steelyard.model.input.SkippedRow;

/**
 * The columns of the list of rows that were passed over, as totals, titles, rows put right elsewhere and flights that
 * stand elsewhere cell for cell.
 */
public final class SkippedList {

    public static final ColumnList<SkippedRow> COLUMNS = ColumnList.ofFile(Stream.of(
            text("file", "file of the row", row -> row.origin().file()),
            text("sheet", "its sheet in a workbook", row -> row.origin().sheet()),
            whole("row", "the row, headings counted", row -> row.origin().row()),
            text(
                    "kind",
                    "totals, headings-again, title, put-right or repeated",
                    row -> row.kind().code()),
            text("reason", "why it was passed over", SkippedRow::reason)));

    private SkippedList() {}
}
