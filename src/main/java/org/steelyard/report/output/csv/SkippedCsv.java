package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.report.column.ListColumn;
import org.steelyard.report.column.SkippedList;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;

/** {@code skipped.csv}: every row that was passed over, each with the reason. */
public final class SkippedCsv implements SeasonOutput {

    private static final List<ListColumn<SkippedRow>> COLUMNS = SkippedList.COLUMNS.inFiles();

    private final CsvFile file;
    private final CsvLine line = new CsvLine();

    public SkippedCsv(Path path) throws IOException {
        file = new CsvFile(path, SkippedList.COLUMNS.names());
    }

    @Override
    public void skipped(SkippedRow row) throws IOException {
        COLUMNS.forEach(column -> column.cell().add(row, line));
        file.write(line);
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        file.close();
    }

    @Override
    public void close() throws IOException {
        file.close();
    }
}
