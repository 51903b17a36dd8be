package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.samples.WorkbookStandard;

/** The demo season, with rows to pass over besides: what two of its outputs state is the same in both. */
class OutputsAgreeIT {

    @TempDir
    private static Path folder;

    private static WrittenReports reports;

    @BeforeAll
    static void audit() throws Exception {
        Path season = Files.createDirectories(folder.resolve("demo"));
        try (Stream<Path> demo = Files.list(Path.of("data-in/demo"))) {
            for (Path file : demo.toList()) {
                Files.copy(file, season.resolve(file.getFileName()));
            }
        }
        List<String> house = Season.house(12);
        List<String> rows = new ArrayList<>(house.subList(0, 3));
        rows.add("Total"
                + ",".repeat((int) house.get(0).chars().filter(c -> c == ',').count()));
        rows.add(house.get(0));
        Files.write(season.resolve("season-more.csv"), rows, StandardCharsets.UTF_8);
        Configuration configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        SeasonOutcome outcome = SeasonRun.audit(
                new SeasonRequest(
                        season,
                        "demo",
                        configuration,
                        ReadOptions.of(configuration.maps()),
                        folder.resolve("reports"),
                        2,
                        "7.8.9",
                        List.of("pilot"),
                        List.of("by=pilot", "room=yes"),
                        true,
                        false),
                new Progress() {});
        reports = WrittenReports.in(outcome.folder());
    }

    @Test
    void everyFigureThatTwoOutputsStateIsTheSameInBoth() throws IOException {
        new Agreement(reports).hold();
    }

    @Test
    void theWorkbookFollowsTheStandard() throws IOException {
        assertThat(WorkbookStandard.faults(reports.folder().resolve("season.xlsx")))
                .isEmpty();
    }

    /** That the first test can fail: one figure changed in one output is found. */
    @ParameterizedTest
    @CsvSource({
        "flights.csv, '\\,948\\.53', '\\,948.54'",
        "flights.csv, '\\,clean\\,', '\\,marginal\\,'",
        "findings.csv, '\\,cg-aft\\,', '\\,cg-forward\\,'",
        "statistics.csv, '(?m)^type\\,jet180\\,\\,\\,jet180\\,take-off CG\\,% MAC\\,\\d+\\,25', 'type\\,jet180\\,\\,\\,jet180\\,take-off CG\\,% MAC\\,2079\\,24'",
        "run.json, '\"breached\" : \\d+', '\"breached\" : 7'",
        "run.json, '\"bytes\" : \\d+', '\"bytes\" : 7'",
        "run.json, '\"totals\" : \\d+', '\"totals\" : 7'",
        "report.html, '\\[0\\,831\\.4\\,', '[0\\,831.5\\,'",
        "report.html, '>42 flights', '>43 flights'",
        "report.html, '>clean<', '>pure<'",
        "rejected.csv, '(?m)^club-2026.csv\\,\\,12\\,', 'club-2026.csv\\,\\,13\\,'",
        "skipped.csv, repeated, totals",
        "statistics.csv, '(?m)\\,no$', '\\,yes'",
        "report.html, 'Worst tail: [A-Z-]+', 'Worst tail: QI-XXX'",
        "report.html, '>95 %<', '>75 %<'",
        "report.html, '>structure<', '>fuel<'",
        "report.html, 'Outside a limit: mass', 'Outside a limit: moment'",
    })
    void aFigureChangedInOneOutputIsFound(String file, String regex, String replacement, @TempDir Path changed)
            throws IOException {
        try (Stream<Path> all = Files.list(reports.folder())) {
            for (Path path : all.toList()) {
                Files.copy(path, changed.resolve(path.getFileName()));
            }
        }
        Path target = changed.resolve(file);
        String before = Files.readString(target, StandardCharsets.UTF_8);
        String after = before.replaceFirst(regex.replace("\\,", ","), replacement.replace("\\,", ","));
        assertThat(after.equals(before)).as("unchanged").isFalse();
        Files.writeString(target, after, StandardCharsets.UTF_8);
        assertThatThrownBy(() -> new Agreement(reports.beside(changed)).hold()).isInstanceOf(AssertionError.class);
    }
}
