package org.steelyard.report.book;

import java.util.List;
import org.apache.poi.ss.usermodel.CellStyle;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Severity;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;
import org.steelyard.report.words.WorkbookWords;

/** Lays out a table on a sheet, row under row. */
public final class BookTable {

    private static final float TITLE_POINTS = 22;
    private static final float HEADING_POINTS = 28;
    private static final float ROW_POINTS = 14;

    private final SheetGrid grid;
    private final WorkbookStyles styles;
    private final int from;
    private final int[] spans;
    private int end;

    /** At the left edge, a cell for each column. */
    public BookTable(SheetGrid grid, WorkbookStyles styles) {
        this(grid, styles, 0);
    }

    /**
     * From a column on.
     *
     * @param spans how many columns of the sheet the columns of the table take, in turn; one each where not said
     */
    public BookTable(SheetGrid grid, WorkbookStyles styles, int from, int... spans) {
        this.grid = grid;
        this.styles = styles;
        this.from = from;
        this.spans = spans.clone();
    }

    /** Titles, notes and rules go on to a column of the sheet. */
    public BookTable to(int lastColumn) {
        end = lastColumn;
        return this;
    }

    /** Sets the widths of the columns as the table wants them. */
    public BookTable widths(List<Column> columns) {
        grid.widths(columns.stream().mapToInt(Column::widthChars).toArray());
        return this;
    }

    /** Title, headings and rows. */
    public void write(DataTable table) {
        title(table.title(), table);
        body(table);
    }

    /** A title of its own above a table. */
    public void title(String words, DataTable table) {
        grid.row(TITLE_POINTS).at(from).data(words, new WorkbookStyles.TextStyle(styles.section, styles.section));
        grid.join(from, last(table));
    }

    /** Headings and rows, or what is said where there are none, and where not all are here. */
    public void body(DataTable table) {
        if (table.rows().isEmpty()) {
            quiet(table.none(), table);
            return;
        }
        headings(table);
        table.rows().forEach(row -> row(table, row));
        if (table.left() > 0) {
            quiet(table.leftOut(), table);
        }
    }

    private void quiet(String words, DataTable table) {
        grid.row(ROW_POINTS).at(from).label(words, styles.quiet);
        grid.join(from, last(table));
    }

    private int last(DataTable table) {
        return Math.max(end, at(table.columns().size()) - 1);
    }

    private int at(int column) {
        int at = from;
        for (int i = 0; i < column; i++) {
            at += span(i);
        }
        return at;
    }

    private int span(int column) {
        return column < spans.length ? spans[column] : 1;
    }

    private void headings(DataTable table) {
        SheetRow row = grid.row(HEADING_POINTS);
        for (int i = 0; i < table.columns().size(); i++) {
            Column column = table.columns().get(i);
            row.at(at(i))
                    .data(
                            column.headed(),
                            column.kind().isNumber() ? both(styles.tableHeadingRight) : both(styles.tableHeading));
        }
        joinSpans(table);
    }

    private static WorkbookStyles.TextStyle both(CellStyle style) {
        return new WorkbookStyles.TextStyle(style, style);
    }

    private void row(DataTable table, List<TableCell> cells) {
        SheetRow row = grid.row();
        for (int i = 0; i < cells.size(); i++) {
            cell(row.at(at(i)), table.columns().get(i), cells.get(i));
        }
        joinSpans(table);
    }

    private void joinSpans(DataTable table) {
        for (int i = 0; i < table.columns().size(); i++) {
            if (span(i) > 1) {
                grid.join(at(i), at(i) + span(i) - 1);
            }
        }
    }

    private void cell(SheetRow row, Column column, TableCell cell) {
        if (cell.isMissing()) {
            row.skip(1);
        } else if (cell.number().isPresent()) {
            row.number(cell.number().getAsDouble(), number(cell));
        } else if (column.kind() == ColumnKind.STATUS) {
            status(row, cell);
        } else if (column.kind().isNumber()) {
            row.label(cell.shown(), styles.quietRight);
        } else if (cell.emphasis() == CellEmphasis.TOTAL) {
            row.data(cell.shown(), both(styles.total));
        } else if (cell.emphasis() == CellEmphasis.QUIET) {
            row.data(cell.shown(), both(styles.quiet));
        } else {
            row.data(cell.shown(), column.kind() == ColumnKind.TEXT ? styles.wrapped : styles.text);
        }
    }

    private void status(SheetRow row, TableCell cell) {
        switch (cell.emphasis()) {
            case CLEAN -> row.label(WorkbookWords.DISC + cell.shown(), styles.status(Status.CLEAN));
            case NOTE -> row.label(WorkbookWords.DOT + cell.shown(), styles.severity(Severity.NOTE));
            case MARGINAL -> row.label(WorkbookWords.DIAMOND + cell.shown(), styles.severity(Severity.MARGINAL));
            case BREACH -> row.label(WorkbookWords.CROSS + cell.shown(), styles.severity(Severity.BREACH));
            case NONE, TOTAL, QUIET -> row.data(cell.shown(), styles.text);
        }
    }

    private CellStyle number(TableCell cell) {
        if (cell.emphasis() == CellEmphasis.TOTAL) {
            return styles.totalNumber;
        }
        WorkbookStyles.NumberStyle style = styles.numbers(cell.format());
        return switch (cell.emphasis()) {
            case MARGINAL -> style.marginal();
            case BREACH -> style.breach();
            default -> style.plain();
        };
    }
}
