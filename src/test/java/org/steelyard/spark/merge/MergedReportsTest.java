package org.steelyard.spark.merge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.file.FileSum;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.SkippedRows;
import org.steelyard.report.output.book.SheetFlights;
import org.steelyard.report.output.book.WorkbookPart;
import org.steelyard.report.season.SeasonReports;
import org.steelyard.samples.Plain;
import org.steelyard.samples.PlantedSeason;
import org.steelyard.samples.SampleJet;

class MergedReportsTest {

    private static final Map<String, FileSum> PARTS = Map.of(
            "flights.parquet/part-000000.parquet", new FileSum(1_000, "a0"),
            "flights.parquet/part-000001.parquet", new FileSum(1_001, "a1"),
            "findings.parquet/part-000000.parquet", new FileSum(1_002, "a2"),
            "rejected/part-000001.csv", new FileSum(1_003, "a3"));

    @TempDir
    private Path folder;

    private static RunFacts facts(long flights, List<String> remarks) {
        RunFacts.InputFile file = Plain.inputFile("planted.csv", "00", 1, "house", flights, flights, 0, 0, List.of());
        return Plain.runFacts(
                "planted", "1", List.of(), List.of(file), List.of(), List.of(), SkippedRows.NONE, remarks);
    }

    private void merged(List<AuditedFlight> flights, List<String> remarks) throws IOException {
        MergeableTally tally = new MergeableTally(PlantedSeason.POLICY, List.of(), () -> {
            throw new IllegalStateException("so few flights need no sketch");
        });
        FlightChoice<Integer> choice = new FlightChoice<>(MergedReports.sizes());
        for (int i = 0; i < flights.size(); i++) {
            int row = i;
            tally.add(flights.get(i));
            choice.offer(new PlacedFlight(i, flights.get(i)), MergedReports.pageRank(i), () -> row);
        }
        List<PlacedFlight> shown = choice.chosen().entrySet().stream()
                .map(one -> new PlacedFlight(one.getKey(), flights.get(one.getValue())))
                .toList();
        MergedReports.write(
                folder.resolve("merged"),
                PlantedSeason.POLICY,
                new MergedReports.Season(
                        tally.summary(Map.of(SampleJet.type().id(), SampleJet.type()), shown),
                        facts(flights.size(), remarks),
                        List.of(),
                        shown,
                        List.of(),
                        Map.of(),
                        new TreeMap<>(PARTS)));
    }

    @Test
    void aSeasonWhoseFlightsAreAllShownIsReportedAsEver() throws IOException {
        List<AuditedFlight> flights = new PlantedSeason(5, 6, 20).flights();
        try (SeasonReports reports = SeasonReports.open(folder.resolve("one"), "planted", PlantedSeason.POLICY)) {
            reports.flights(flights);
            reports.finish(facts(flights.size(), List.of()));
        }
        merged(flights, List.of());

        Path one = folder.resolve("one/planted");
        Path merged = folder.resolve("merged/planted");
        List<String> page = new ArrayList<>(Files.readAllLines(merged.resolve("report.html")));
        String data = Files.readString(one.resolve("report.html"));
        String flightsOnPage =
                data.substring(data.indexOf("\"flights\":["), data.indexOf("</script>", data.indexOf("\"flights\":[")));
        assertThat(String.join("\n", page)).contains(flightsOnPage);
        assertThat(withoutOutputs(merged.resolve("run.json"))).isEqualTo(withoutOutputs(one.resolve("run.json")));
        assertSameStatistics(merged.resolve("statistics.csv"), one.resolve("statistics.csv"));
    }

    /** Cell for cell; sums of parts are rounded elsewhere than sums of the whole, in the last digits. */
    private static void assertSameStatistics(Path merged, Path one) throws IOException {
        List<String> theirs = Files.readAllLines(one);
        List<String> ours = Files.readAllLines(merged);
        assertThat(ours).hasSameSizeAs(theirs).hasSizeGreaterThan(20);
        for (int line = 0; line < theirs.size(); line++) {
            String[] expected = theirs.get(line).split(",", -1);
            String[] cells = ours.get(line).split(",", -1);
            assertThat(cells).as(theirs.get(line)).hasSameSizeAs(expected);
            for (int i = 0; i < cells.length; i++) {
                if (expected[i].matches("-?\\d+\\.\\d+(E-?\\d+)?")) {
                    assertThat(Double.parseDouble(cells[i]))
                            .as(theirs.get(line))
                            .isCloseTo(Double.parseDouble(expected[i]), within(1e-9));
                } else {
                    assertThat(cells[i]).as(theirs.get(line)).isEqualTo(expected[i]);
                }
            }
        }
    }

    private static JsonNode withoutOutputs(Path file) throws IOException {
        ObjectNode tree = (ObjectNode) new ObjectMapper().readTree(Files.readAllBytes(file));
        assertThat(tree.remove("outputs")).isNotEmpty();
        return tree;
    }

    @Test
    void everyPartIsListedWithSizeAndChecksumAndNoFolderThatIsNotThere() throws IOException {
        merged(new PlantedSeason(5, 2, 10).flights(), List.of());

        Path merged = folder.resolve("merged/planted");
        JsonNode outputs = new ObjectMapper()
                .readTree(Files.readAllBytes(merged.resolve("run.json")))
                .path("outputs");
        Map<String, String> listed = new LinkedHashMap<>();
        outputs.forEach(output -> listed.put(
                output.path("file").asText(),
                output.path("bytes").asText() + " " + output.path("sha256").asText()));
        assertThat(listed.keySet())
                .containsExactly(
                        "flights.parquet/part-000000.parquet",
                        "flights.parquet/part-000001.parquet",
                        "findings.parquet/part-000000.parquet",
                        "rejected/part-000001.csv",
                        "statistics.csv",
                        "season.xlsx",
                        "report.html",
                        "run.json");
        PARTS.forEach((name, sum) -> assertThat(listed).containsEntry(name, sum.bytes() + " " + sum.sha256()));
        assertThat(listed.get("statistics.csv"))
                .matches(Files.size(merged.resolve("statistics.csv")) + " [0-9a-f]{64}");
        assertThat(Files.readString(merged.resolve("report.html")))
                .contains("href=\"rejected\"")
                .doesNotContain("href=\"skipped\"");
    }

    @Test
    void remarksStandOnEveryOutput() throws IOException {
        merged(new PlantedSeason(5, 2, 10).flights(), List.of("Percentiles are within a bound."));

        for (String file : List.of("run.json", "report.html")) {
            assertThat(Files.readString(folder.resolve("merged/planted").resolve(file)))
                    .contains("Percentiles are within a bound.")
                    .contains("For simulation, training and analysis only.");
        }
    }

    @Test
    void aWorkbookThatListsAPartSaysSoOnItsSheets() {
        WorkbookPart part = new WorkbookPart(10_000, 1_000_000, 2_000, 2_500);

        assertThat(part.flightsNote())
                .isEqualTo("Of the first 10,000 of 1,000,000 flights only; flights.parquet and findings.parquet hold"
                        + " all.");
        assertThat(part.rejectedNote()).startsWith("The first 2,000 of 2,500 rejected rows only");
        assertThat(SheetFlights.LAYOUT.noting(part.flightsNote()).note()).startsWith("Of the first 10,000");
        assertThat(new WorkbookPart(10_000, 10_000, 0, 0).flightsNote()).isEmpty();
    }
}
