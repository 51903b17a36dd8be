package org.steelyard.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.RejectedRow;

class SeasonWorkbookTest {

    @TempDir
    Path folder;

    @Test
    void look() throws Exception {
        Path file = Path.of(System.getProperty("look", folder.resolve("s.xlsx").toString()));
        write(file, WorkbookFixture.flights(600, 7), WorkbookFixture.rejected(14), WorkbookLimits.FORMAT);
        assertThat(file).exists();
    }

    static void write(Path file, List<AuditedFlight> flights, List<RejectedRow> rejected, WorkbookLimits limits)
            throws Exception {
        try (SeasonWorkbook book = SeasonWorkbook.open(file, WorkbookFixture.POLICY, limits)) {
            flights.forEach(book::flight);
            rejected.forEach(book::rejected);
            book.finish(WorkbookFixture.summary(flights), WorkbookFixture.facts(flights.size(), rejected.size()));
        }
    }
}
