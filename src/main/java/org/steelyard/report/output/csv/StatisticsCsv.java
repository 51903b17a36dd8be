package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.OptionalDouble;
import org.steelyard.analyse.season.SeasonTables;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;
import tech.tablesaw.api.ColumnType;
import tech.tablesaw.api.Row;
import tech.tablesaw.api.Table;

/**
 * {@code statistics.csv}: one line for each group and measure at full precision; the columns are those of
 * {@link SeasonTables#groupSpreads}. A cell is empty where a figure does not exist, as the sd of one flight.
 */
public final class StatisticsCsv implements SeasonOutput {

    private final Path path;

    public StatisticsCsv(Path path) {
        this.path = path;
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        Iterable<Table> tables = SeasonTables.groupSpreads(result.summary());
        try (CsvFile file = new CsvFile(path, tables.iterator().next().columnNames())) {
            for (Table table : tables) {
                write(table, file);
            }
        }
    }

    private static void write(Table table, CsvFile file) throws IOException {
        CsvLine line = new CsvLine();
        for (Row row : table) {
            for (int column = 0; column < table.columnCount(); column++) {
                cell(row, column, line);
            }
            file.write(line);
        }
    }

    private static void cell(Row row, int column, CsvLine line) {
        ColumnType type = row.getColumnType(column);
        if (type.equals(ColumnType.STRING)) {
            line.text(row.getString(column));
        } else if (type.equals(ColumnType.LONG)) {
            line.whole(row.getLong(column));
        } else {
            line.number(
                    row.column(column).isMissing(row.getRowNumber())
                            ? OptionalDouble.empty()
                            : OptionalDouble.of(row.getDouble(column)));
        }
    }
}
