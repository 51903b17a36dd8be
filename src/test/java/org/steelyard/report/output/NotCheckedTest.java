package org.steelyard.report.output;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.report.output.page.Flights.flight;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.type.NotChecked;
import org.steelyard.model.finding.Phase;
import org.steelyard.report.output.book.WorkbookReadBack;
import org.steelyard.report.output.page.Flights;
import org.steelyard.report.output.page.Runs;
import org.steelyard.report.season.SeasonReports;

/** A season with a type that has no envelope for some phases: no output may say that it is inside every limit. */
class NotCheckedTest {

    private static final String SENTENCE =
            "No CG is checked where a type has no envelope: " + Flights.JET.id() + " in flight and at landing.";

    @TempDir
    private Path reports;

    private Path season(NotChecked... some) throws IOException {
        RunFacts plain = Runs.facts(1, 0);
        try (SeasonReports season = SeasonReports.open(reports, Runs.SEASON, Flights.POLICY)) {
            season.flight(flight("1").build());
            season.finish(new RunFacts(
                    plain.season(),
                    plain.version(),
                    plain.options(),
                    plain.inputs(),
                    plain.config(),
                    plain.skipped(),
                    plain.skippedRows(),
                    List.of(),
                    List.of(some)));
        }
        return reports.resolve(Runs.SEASON);
    }

    @Test
    void pageWorkbookAndRunSaySo() throws IOException {
        Path folder = season(
                new NotChecked(Flights.JET.id(), List.of(Phase.FLIGHT, Phase.LANDING)),
                new NotChecked("without flights", List.of(Phase.LANDING)));
        assertThat(Runs.text(folder.resolve("report.html")))
                .contains("All flights are inside every limit that was checked and close to none.")
                .contains(SENTENCE)
                .doesNotContain("without flights");
        JsonNode run = new ObjectMapper().readTree(Runs.text(folder.resolve("run.json")));
        assertThat(run.at("/not_checked")).hasSize(1);
        assertThat(run.at("/not_checked/0/type").asText()).isEqualTo(Flights.JET.id());
        assertThat(run.at("/not_checked/0/phases"))
                .extracting(JsonNode::asText)
                .containsExactly("in flight", "landing");
        assertThat(new WorkbookReadBack(folder.resolve("season.xlsx")).texts("Overview"))
                .contains("The one flight is inside every limit that was checked and close to none. " + SENTENCE);
    }

    @Test
    void whereAllIsCheckedNothingIsSaid() throws IOException {
        Path folder = season();
        assertThat(Runs.text(folder.resolve("report.html")))
                .contains("All flights are inside every limit and close to none.")
                .doesNotContain("No CG is checked");
    }
}
