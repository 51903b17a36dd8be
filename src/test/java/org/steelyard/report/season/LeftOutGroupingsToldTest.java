package org.steelyard.report.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.analyse.find.SeasonStatistics;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.book.WorkbookReadBack;
import org.steelyard.report.output.page.Flights;
import org.steelyard.report.output.page.Runs;

/** What the statistics leave out, as it has too many values, is told wherever they are read. */
class LeftOutGroupingsToldTest {

    private static final String PILOTS = "No statistics by 'pilot': it has more than 50,000 different values.";
    private static final String ROUTES = "No statistics by 'route': it has more than 50,000 different values.";

    @TempDir
    private Path folder;

    private Path reports(String... leftOut) throws IOException {
        SeasonTally tally = new SeasonTally(Flights.POLICY);
        SeasonSummary summary = with(tally.summary(), List.of(leftOut));
        try (StagedFolder staged = StagedFolder.in(Destination.of(folder), Runs.SEASON)) {
            List<SeasonOutput> outputs = new ArrayList<>();
            SeasonReports.all(staged, Flights.POLICY, outputs);
            SeasonResult result = SeasonResult.of(summary, Runs.facts(0, 0), List.of(), Flights.POLICY, staged.files());
            for (SeasonOutput output : outputs) {
                output.finish(result);
                output.close();
            }
            staged.publish();
        }
        return folder.resolve(Runs.SEASON);
    }

    private static SeasonSummary with(SeasonSummary summary, List<String> leftOut) {
        SeasonStatistics none = summary.statistics();
        return new SeasonSummary(
                summary.all(),
                summary.types(),
                summary.tails(),
                summary.routes(),
                summary.findings(),
                summary.trim(),
                summary.worst(),
                summary.months(),
                summary.recordedTrim(),
                new SeasonStatistics(
                        none.spreads(),
                        none.drivers(),
                        none.apart(),
                        none.unusual(),
                        none.drift(),
                        none.cloud(),
                        none.missing(),
                        leftOut),
                summary.likelyOutside());
    }

    @Test
    void runFactsPageAndWorkbookSayWhatIsLeftOutAndFromHowManyOn() throws IOException {
        Path reports = reports("pilot", "route");
        JsonNode run = new ObjectMapper().readTree(Runs.text(reports.resolve("run.json")));
        assertThat(run.at("/left_out_groupings"))
                .extracting(
                        one -> one.get("grouping").asText(),
                        one -> one.get("values_more_than").asInt())
                .containsExactly(tuple("pilot", 50_000), tuple("route", 50_000));
        assertThat(run.at("/remarks")).extracting(JsonNode::asText).containsExactly(PILOTS, ROUTES);
        assertThat(new WorkbookReadBack(reports.resolve("season.xlsx")).texts("Run facts"))
                .contains(PILOTS, ROUTES);
        assertThat(Runs.text(reports.resolve("report.html")).replace("&#39;", "'"))
                .contains(PILOTS, ROUTES);
    }

    @Test
    void noOutputSaysThatNoRouteIsBreachedWhereRoutesAreLeftOut() throws IOException {
        Path reports = reports("route");
        String why = "Left out: there are more than 50,000 different values.";
        assertThat(Runs.text(reports.resolve("report.html")))
                .containsPattern("<h3>Routes by share breached</h3>\\s*<p class=\"quiet\">" + why)
                .containsPattern("<h3>Tails by share breached</h3>\\s*<p class=\"quiet\">None has a breached flight.");
        List<String> overview = new WorkbookReadBack(reports.resolve("season.xlsx")).texts("Overview");
        assertThat(overview).contains(why).containsOnlyOnce("None has a breached flight.");
    }

    @Test
    void whereNothingIsLeftOutNothingIsSaid() throws IOException {
        Path reports = reports();
        String run = Runs.text(reports.resolve("run.json"));
        assertThat(new ObjectMapper().readTree(run).at("/left_out_groupings")).isEmpty();
        assertThat(run + Runs.text(reports.resolve("report.html"))).doesNotContain("different values.");
    }
}
