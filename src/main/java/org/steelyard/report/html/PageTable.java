package org.steelyard.report.html;

import java.util.List;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** Lays out a table on a page. */
public final class PageTable {

    private final DataTable table;
    private boolean stacked;
    private String bar = "";

    public PageTable(DataTable table) {
        this.table = table;
    }

    /** Rows become blocks on a narrow screen. */
    public PageTable stacked() {
        stacked = true;
        return this;
    }

    /** Draws the numbers of a column as bars, too, at the end of the rows. */
    public PageTable bar(String key) {
        bar = key;
        return this;
    }

    /** The table; or what is said where it has no rows, and where not all are here. */
    public void write(Html html) {
        if (table.rows().isEmpty()) {
            html.element("p", table.none(), "class", "quiet");
            return;
        }
        ScrolledTables.open(html, table.title(), stacked ? "stack" : "");
        table.columns()
                .forEach(column -> html.open(
                                "th", "scope", "col", "class", column.kind().isNumber() ? "number" : "")
                        .data(column.headed())
                        .close());
        if (!bar.isBlank()) {
            html.element("th", "", "scope", "col", "class", "");
        }
        ScrolledTables.body(html);
        table.rows().forEach(row -> row(html, row));
        ScrolledTables.close(html);
        if (!table.leftOut().isBlank()) {
            html.element("p", table.leftOut(), "class", "hint");
        }
    }

    private void row(Html html, List<TableCell> row) {
        html.open("tr");
        for (int i = 0; i < row.size(); i++) {
            cell(html, i, row.get(i));
        }
        if (!bar.isBlank()) {
            html.open("td");
            bar(html, row);
            html.close();
        }
        html.closeBlock();
    }

    private void cell(Html html, int index, TableCell cell) {
        Column column = table.columns().get(index);
        if (index == 0) {
            html.open("th", "scope", "row", "class", look(column, cell));
        } else if (stacked) {
            html.open("td", "class", look(column, cell), "data-label", column.headed());
        } else {
            html.open("td", "class", look(column, cell));
        }
        if (cell.emphasis() == CellEmphasis.TOTAL) {
            html.open("strong");
        }
        content(html, column, cell);
        if (cell.emphasis() == CellEmphasis.TOTAL) {
            html.close();
        }
        html.close();
    }

    private static void content(Html html, Column column, TableCell cell) {
        switch (column.kind()) {
            case CODE -> html.element("code", cell.shown());
            case STATUS -> status(html, cell);
            case NAME, TEXT -> lines(html, cell.shown());
            default -> html.text(cell.shown());
        }
    }

    private static void lines(Html html, String text) {
        String[] lines = text.split("\n", -1);
        html.data(lines[0]);
        for (int i = 1; i < lines.length; i++) {
            html.empty("br").data(lines[i]);
        }
    }

    private static void status(Html html, TableCell cell) {
        switch (cell.emphasis()) {
            case CLEAN, NOTE, MARGINAL, BREACH -> symbol(cell.emphasis()).draw(html, cell.shown());
            default -> html.text(cell.shown());
        }
    }

    private static String look(Column column, TableCell cell) {
        if (column.kind().isNumber()) {
            return cell.emphasis().compareTo(CellEmphasis.QUIET) < 0 ? "number" : "number " + emphasis(cell.emphasis());
        }
        if (cell.emphasis() == CellEmphasis.QUIET) {
            return "quiet";
        }
        return column.kind() == ColumnKind.NAME || column.kind() == ColumnKind.DATE ? "nowrap" : "";
    }

    private static String emphasis(CellEmphasis emphasis) {
        return emphasis == CellEmphasis.QUIET ? "quiet" : symbol(emphasis).look();
    }

    private static StatusSymbol symbol(CellEmphasis emphasis) {
        return switch (emphasis) {
            case BREACH -> StatusSymbol.BREACHED;
            case MARGINAL -> StatusSymbol.MARGINAL;
            case CLEAN -> StatusSymbol.CLEAN;
            default -> StatusSymbol.NOTE;
        };
    }

    private void bar(Html html, List<TableCell> row) {
        int index = table.index(bar);
        double most = table.rows().stream()
                .mapToDouble(one -> one.get(index).number().orElse(0))
                .max()
                .orElse(1);
        String look = row.stream()
                .map(TableCell::emphasis)
                .filter(emphasis -> emphasis.compareTo(CellEmphasis.QUIET) > 0)
                .findFirst()
                .map(PageTable::emphasis)
                .orElse("");
        html.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "count",
                "viewBox",
                "0 0 100 10",
                "aria-hidden",
                "true");
        double share = row.get(index).number().orElse(0) / Math.max(1, most);
        Svg.rect(html, "part " + look, 0.5, 1, Math.max(1, 99 * share), 8);
        html.close();
    }
}
