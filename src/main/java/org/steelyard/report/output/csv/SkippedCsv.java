package org.steelyard.report.output.csv;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.CsvFile;
import org.steelyard.report.text.CsvLine;

/**
 * {@code skipped.csv}: every row that was passed over, as totals, titles, rows put right elsewhere and flights that
 * stand elsewhere cell for cell, each with the reason.
 */
public final class SkippedCsv implements SeasonOutput {

    private static final List<String> HEADINGS = List.of("file", "sheet", "row", "kind", "reason");

    private final CsvFile file;
    private final CsvLine line = new CsvLine();

    public SkippedCsv(Path path) throws IOException {
        file = new CsvFile(path, HEADINGS);
    }

    @Override
    public void skipped(SkippedRow row) throws IOException {
        file.write(line.text(row.origin().file())
                .text(row.origin().sheet())
                .whole(row.origin().row())
                .text(row.kind().code())
                .text(row.reason()));
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
