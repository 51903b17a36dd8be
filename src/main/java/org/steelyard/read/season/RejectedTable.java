package org.steelyard.read.season;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.FormerRow;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.GuardedText;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RejectedColumns;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;
import org.steelyard.read.table.xlsx.XlsxCells;
import org.steelyard.read.text.Blanks;

/**
 * A table of rejected rows, known by its headings: which column is which. Text in it is guarded against being run as a
 * formula, and is freed here.
 */
final class RejectedTable {

    private final Table table;
    private final RawRow headingRow;
    private final List<String> headings;
    private final Map<String, Integer> columns = new HashMap<>();

    private RejectedTable(Table table, RawRow headingRow) {
        this.table = table;
        this.headingRow = headingRow;
        this.headings =
                HeadingRow.headings(headingRow).stream().map(GuardedText::free).toList();
        for (int i = 0; i < headings.size(); i++) {
            columns.putIfAbsent(headings.get(i), i);
        }
    }

    /** The table as one of rejected rows; empty if it is none, or cannot be read. */
    static Optional<RejectedTable> in(Table table) {
        try {
            return table.head(RejectedColumns.FINDER).stream()
                    .filter(row -> HeadingRow.headings(row).containsAll(RejectedColumns.REQUIRED))
                    .findFirst()
                    .map(row -> new RejectedTable(table, row));
        } catch (SourceFault e) {
            return Optional.empty();
        }
    }

    TableName name() {
        return table.name();
    }

    List<String> headings() {
        return headings;
    }

    long headingRow() {
        return headingRow.number();
    }

    /**
     * The rows below the headings.
     *
     * @throws SourceFault if they cannot be read
     */
    RowStream rows() throws SourceFault {
        RowStream rows = table.rows(RejectedColumns.FINDER);
        Optional<RawRow> row = rows.next();
        while (row.isPresent() && row.get().number() < headingRow.number()) {
            row = rows.next();
        }
        return rows;
    }

    /** The position of a heading; empty if the table has no such column. */
    Optional<Integer> column(String heading) {
        return Optional.ofNullable(columns.get(heading));
    }

    /** The cell of a row under one of the headings of a place, blank if there is none. */
    String cell(RawRow row, String heading) {
        Integer column = columns.get(heading);
        return column == null ? "" : GuardedText.free(Blanks.strip(row.cell(column)));
    }

    /** Where the row of a rejected row stood; empty if its cells do not say it. */
    Optional<FormerPlace> place(RawRow row) {
        String file = cell(row, RejectedColumns.FILE);
        String map = cell(row, RejectedColumns.MAP);
        int number = XlsxCells.wholeNumber(cell(row, RejectedColumns.ROW));
        int round = Math.max(1, XlsxCells.wholeNumber(cell(row, RejectedColumns.ROUND)));
        return file.isEmpty() || map.isEmpty() || number < 1
                ? Optional.empty()
                : Optional.of(new FormerPlace(
                        new FormerRow(
                                new Origin(file, cell(row, RejectedColumns.SHEET), number),
                                round,
                                cell(row, RejectedColumns.CHECK)),
                        map));
    }
}
