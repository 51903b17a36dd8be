package org.steelyard.report.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.file.Destination;
import org.steelyard.report.output.page.Runs;
import org.steelyard.samples.PlantedSeason;

/** {@code statistics.csv} against Hipparchus on {@code flights.csv}, figure by figure. */
@Tag("validation")
class StatisticsOracleTest {

    private static final double NEAR = 1e-9;

    private static final Map<String, String> COLUMNS = Map.of(
            "take-off CG", "tow_cg_pct_mac",
            "take-off trim", "trim_units",
            "zero-fuel CG", "zfw_cg_pct_mac",
            "landing CG", "lw_cg_pct_mac");

    private static final Map<String, Function<CSVRecord, String>> GROUPS = Map.of(
            "type", row -> row.get("type"),
            "flap setting", StatisticsOracleTest::setting,
            "tail", row -> row.get("tail"),
            "route", row -> row.get("from") + "–" + row.get("to"),
            "month", row -> row.get("date").substring(0, 7),
            "take-off mass", row -> band(Double.parseDouble(row.get("tow_kg"))),
            "Gate", row -> row.get("extras").replaceAll(".*gate=(\\w*).*", "$1"));

    @TempDir
    Path folder;

    /** The sample jet's bands are of 60,000 / 12 = 5,000 kg. */
    private static String band(double massKg) {
        int below = (int) (massKg / 5_000);
        int low = below * 5_000;
        return String.format(java.util.Locale.ROOT, "%,d to %,d kg", low, low + 5_000);
    }

    private static String setting(CSVRecord row) {
        return row.get("trim_thrust").isEmpty()
                ? row.get("flaps")
                : row.get("flaps") + ", thrust " + row.get("trim_thrust");
    }

    private static List<CSVRecord> read(Path file) throws IOException {
        return CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get()
                .parse(new StringReader(Runs.text(file)))
                .getRecords();
    }

    @Test
    void everyFigureIsThatOfASecondLibrary() throws IOException {
        List<AuditedFlight> flights = new PlantedSeason(21, 20, 12).gates(5).flights();
        try (SeasonReports reports = SeasonReports.open(
                Destination.of(folder), "made", PlantedSeason.POLICY, List.of("Gate", "GATE"), false)) {
            for (AuditedFlight flight : flights) {
                reports.flight(flight);
            }
            reports.finish(Runs.facts(flights.size(), 0));
        }
        List<CSVRecord> rows = read(folder.resolve("made").resolve("flights.csv"));
        List<CSVRecord> figures = read(folder.resolve("made").resolve("statistics.csv"));
        assertThat(figures.stream().map(row -> row.get("grouping")).distinct())
                .containsExactly(
                        "type",
                        "flap setting",
                        "tail",
                        "route",
                        "month",
                        "take-off mass",
                        "load factor",
                        "pilot",
                        "Gate");
        int compared = 0;
        for (CSVRecord figure : figures) {
            if (GROUPS.containsKey(figure.get("grouping"))) {
                compare(figure, rows);
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(100);
        // each grouping shares out all flights
        for (String grouping : GROUPS.keySet()) {
            assertThat(figures.stream()
                            .filter(row -> row.get("grouping").equals(grouping)
                                    && row.get("measure").equals("take-off CG"))
                            .mapToInt(row -> Integer.parseInt(row.get("n")))
                            .sum())
                    .as(grouping)
                    .isEqualTo(flights.size());
        }
    }

    private static void compare(CSVRecord figure, List<CSVRecord> rows) {
        String column = COLUMNS.get(figure.get("measure"));
        List<CSVRecord> group = new ArrayList<>();
        DescriptiveStatistics statistics = new DescriptiveStatistics();
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
        for (CSVRecord row : rows) {
            boolean same = row.get("type").equals(figure.get("type"))
                    && (figure.get("flaps").isEmpty() || row.get("flaps").equals(figure.get("flaps")))
                    && (figure.get("flaps").isEmpty() || row.get("trim_thrust").equals(figure.get("thrust")))
                    && GROUPS.get(figure.get("grouping")).apply(row).equals(figure.get("group"));
            if (same && !row.get(column).isEmpty()) {
                group.add(row);
                statistics.addValue(Double.parseDouble(row.get(column)));
            }
        }
        percentile.setData(statistics.getValues());
        assertThat(Long.parseLong(figure.get("n"))).as(figure.toString()).isEqualTo(statistics.getN());
        near(figure, "mean", statistics.getMean());
        near(figure, "min", statistics.getMin());
        near(figure, "max", statistics.getMax());
        if (statistics.getN() > 1) {
            near(figure, "sd", statistics.getStandardDeviation());
        } else {
            assertThat(figure.get("sd")).isEmpty();
        }
        for (Map.Entry<String, Double> one : Map.of("p5", 5.0, "p25", 25.0, "median", 50.0, "p75", 75.0, "p95", 95.0)
                .entrySet()) {
            near(figure, one.getKey(), percentile.evaluate(one.getValue()));
        }
        near(figure, "share_breached", share(group, "breached"));
        near(figure, "share_marginal", share(group, "marginal"));
        assertThat(figure.get("few")).isEqualTo(statistics.getN() < 21 ? "yes" : "no");
        assertThat(figure.get("p5_from").isEmpty()).isEqualTo(statistics.getN() < 72);
    }

    private static double share(List<CSVRecord> group, String status) {
        return group.stream().filter(row -> row.get("status").equals(status)).count() / (double) group.size();
    }

    private static void near(CSVRecord figure, String column, double expected) {
        assertThat(Double.parseDouble(figure.get(column)))
                .as(column + " of " + figure)
                .isCloseTo(expected, within(NEAR));
    }
}
