package org.steelyard.report;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.Policy;
import org.steelyard.model.RejectedRow;

/** The workbook as one of a season's files. */
final class SeasonWorkbookOutput implements SeasonOutput {

    private final SeasonWorkbook workbook;

    SeasonWorkbookOutput(Path file, Policy policy) throws IOException {
        workbook = SeasonWorkbook.open(file, policy);
    }

    @Override
    public Work begin(List<AuditedFlight> flights) throws IOException {
        return workbook.begin(flights);
    }

    @Override
    public void rejected(RejectedRow row) throws IOException {
        workbook.rejected(row);
    }

    @Override
    public void finish(SeasonResult result) throws IOException {
        workbook.finish(result.summary(), result.facts());
    }

    @Override
    public void close() throws IOException {
        workbook.close();
    }
}
