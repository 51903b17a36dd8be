package org.steelyard.report.table;

import java.io.IOException;
import java.util.List;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;

/** Writes a table as lines of CSV: numbers at full precision, an empty cell for one that does not exist. */
public final class TableCsv {

    private TableCsv() {}

    /** The headings of the file. */
    public static List<String> names(List<Column> columns) {
        return columns.stream().map(Column::key).toList();
    }

    public static void write(DataTable table, CsvFile file) throws IOException {
        CsvLine line = new CsvLine();
        for (List<TableCell> row : table.rows()) {
            for (int i = 0; i < row.size(); i++) {
                TableCell cell = row.get(i);
                if (table.columns().get(i).kind().isNumber()) {
                    line.number(cell.number());
                } else {
                    line.text(cell.shown());
                }
            }
            file.write(line);
        }
    }
}
