package org.steelyard.cli.text;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** Lays out a table on the terminal. */
public final class TerminalTable {

    private static final int WIDTH = 120;
    private static final String INDENT = "  ";

    private final DataTable table;

    public TerminalTable(DataTable table) {
        this.table = table;
    }

    /** Title, headings and rows, and what is said where there are none or not all are here. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(table.title());
        if (table.rows().isEmpty()) {
            lines.add(INDENT + table.none());
            return lines;
        }
        TextTable text = new TextTable(
                WIDTH, table.columns().stream().map(TerminalTable::heading).toArray(String[]::new));
        table.rows().forEach(row -> text.row(row.stream().map(TableCell::shown).toList()));
        lines.addAll(text.lines(INDENT));
        if (!table.leftOut().isBlank()) {
            lines.add(INDENT + table.leftOut());
        }
        return lines;
    }

    private static String heading(Column column) {
        return (column.kind().isNumber() ? "#" : "") + column.headed();
    }
}
