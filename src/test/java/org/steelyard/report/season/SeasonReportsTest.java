package org.steelyard.report.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.steelyard.report.output.page.Flights.POLICY;
import static org.steelyard.report.output.page.Flights.flight;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.output.SeasonOutput;
import org.steelyard.report.output.SeasonResult;
import org.steelyard.report.output.page.Flights;
import org.steelyard.report.output.page.Runs;

class SeasonReportsTest {

    @TempDir
    private Path reports;

    private static Map<String, String> files(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.list(folder)) {
            for (Path path : paths.toList()) {
                files.put(path.getFileName().toString(), HexFormat.of().formatHex(Files.readAllBytes(path)));
            }
        }
        return files;
    }

    private List<String> inReports() throws IOException {
        try (Stream<Path> paths = Files.list(reports)) {
            return paths.map(path -> path.getFileName().toString()).toList();
        }
    }

    @Test
    void aSeasonIsOneFolderWithAllFilesAndNothingElseIsLeft() throws IOException {
        Path folder = Runs.write(reports, Flights.season(1, 50), List.of(Runs.rejected(60, List.of("a"), "b")));
        assertThat(inReports()).containsExactly("2025");
        assertThat(files(folder))
                .containsKeys("flights.csv", "findings.csv", "rejected.csv", "report.html", "run.json")
                .doesNotContainKey("rejected.waiting");
    }

    @Test
    void theSameInputsGiveTheSameBytes() throws IOException {
        Path first = Runs.write(reports.resolve("a"), Flights.season(2, 400), List.of());
        Path second = Runs.write(reports.resolve("b"), Flights.season(2, 400), List.of());
        assertThat(files(second)).isEqualTo(files(first));
    }

    @Test
    void workersAndBatchesDoNotChangeABitOfWhatIsWritten() throws IOException {
        List<AuditedFlight> flights = Flights.season(3, 1700);
        Path alone = Runs.write(reports.resolve("a"), flights, List.of());
        Path shared = reports.resolve("b");
        ExecutorService workers = Executors.newFixedThreadPool(3);
        try (SeasonReports season =
                SeasonReports.open(shared, Runs.SEASON, POLICY).writtenBy(workers, 2)) {
            for (int from = 0; from < flights.size(); from += 500) {
                season.flights(flights.subList(from, Math.min(from + 500, flights.size())));
            }
            season.finish(Runs.facts(flights.size(), 0));
        } finally {
            workers.shutdownNow();
        }
        assertThat(files(shared.resolve(Runs.SEASON))).isEqualTo(files(alone));
    }

    @Test
    void theSummaryIsHandedBack() throws IOException {
        try (SeasonReports season = SeasonReports.open(reports, "2025", POLICY)) {
            season.flight(flight("1").build());
            SeasonSummary summary = season.finish(Runs.facts(1, 0));
            assertThat(summary.all().clean()).isOne();
        }
    }

    @Test
    void closingWithoutFinishingLeavesTheOldReportsAsTheyWere() throws IOException {
        Map<String, String> before = files(Runs.write(reports, Flights.season(3, 20), List.of()));
        try (SeasonReports season = SeasonReports.open(reports, Runs.SEASON, POLICY)) {
            season.flight(flight("1").build());
        }
        assertThat(files(reports.resolve("2025"))).isEqualTo(before);
        assertThat(inReports()).containsExactly("2025");
    }

    @ParameterizedTest
    @ValueSource(strings = {"flight", "rejected", "finish"})
    void aFailureInTheMiddleLeavesTheOldReportsAsTheyWere(String when) throws IOException {
        Map<String, String> before = files(Runs.write(reports, Flights.season(3, 20), List.of()));
        assertThatThrownBy(() -> {
                    try (SeasonReports season =
                            SeasonReports.open(reports, "2025", POLICY, (folder, policy, outputs) -> {
                                SeasonReports.all(folder, policy, outputs);
                                outputs.add(new FailingOutput(when));
                            })) {
                        season.flight(flight("1").build());
                        season.rejected(Runs.rejected(3, List.of("a"), "b"));
                        season.finish(Runs.facts(1, 1));
                    }
                })
                .isInstanceOf(IOException.class)
                .hasMessage("no space left");
        assertThat(files(reports.resolve("2025"))).isEqualTo(before);
        assertThat(inReports()).containsExactly("2025");
    }

    @Test
    void aFileThatCannotBeOpenedLeavesNothingBehind() throws IOException {
        assertThatThrownBy(() -> SeasonReports.open(reports, "2025", POLICY, (folder, policy, outputs) -> {
                    SeasonReports.all(folder, policy, outputs);
                    throw new IOException("no space left");
                }))
                .isInstanceOf(IOException.class);
        assertThat(inReports()).isEmpty();
    }

    @Test
    void filesOfOthersInTheFolderStay() throws IOException {
        Path folder = Runs.write(reports, List.of(), List.of());
        Files.writeString(folder.resolve("my-notes.txt"), "mine");
        Runs.write(reports, List.of(flight("1").build()), List.of());
        assertThat(folder.resolve("my-notes.txt")).hasContent("mine");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", " ", "..", ".hidden", "a/b", "a\\b", "C:", "x\n", "ends.", "ends ", "what?"})
    void aNameThatCannotBeAFolderIsRefused(String name) throws IOException {
        assertThatThrownBy(() -> SeasonReports.open(reports, name, POLICY))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("'" + name + "'");
        assertThat(inReports()).isEmpty();
    }

    private record FailingOutput(String when) implements SeasonOutput {

        private void fail(String now) throws IOException {
            if (now.equals(when)) {
                throw new IOException("no space left");
            }
        }

        @Override
        public void flight(org.steelyard.check.result.AuditedFlight flight) throws IOException {
            fail("flight");
        }

        @Override
        public void rejected(org.steelyard.model.input.RejectedRow row) throws IOException {
            fail("rejected");
        }

        @Override
        public void finish(SeasonResult result) throws IOException {
            fail("finish");
        }
    }
}
