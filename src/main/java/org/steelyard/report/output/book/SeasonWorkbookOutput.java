package org.steelyard.report.output.book;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.policy.Policy;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.text.Work;

/** The workbook as one of a season's files. */
public final class SeasonWorkbookOutput implements SeasonOutput {

    private final SeasonWorkbook workbook;

    public SeasonWorkbookOutput(Path file, Policy policy) throws IOException {
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
