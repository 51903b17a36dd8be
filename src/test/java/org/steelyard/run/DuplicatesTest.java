package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.read.row.FlightKey;
import org.steelyard.report.output.RunFacts;

/** Flights that stand in more than one row: which one counts, and that nothing is lost. */
class DuplicatesTest {

    private static final long SEED = 41;

    @TempDir
    private Path folder;

    /** Two files: the first flight once more cell for cell, the second with another pilot and trip fuel. */
    private Season season() throws Exception {
        List<String> first = Season.house(4);
        List<String> second = new ArrayList<>(Season.house(0));
        second.add(first.get(1));
        second.add(first.get(2).replaceFirst("QI-J(..),", "qi-j$1,").replaceFirst(",[a-z]+[0-9],", ",other,"));
        return new Season(folder).with("season-a.csv", first).with("season-b.csv", second);
    }

    private static List<String> flights(Season season) throws Exception {
        return season.records(season.report("flights.csv")).stream()
                .map(row -> row.get("file") + ":" + row.get("row"))
                .toList();
    }

    private static List<String> rejected(Season season) throws Exception {
        return season.records(season.report("rejected.csv")).stream()
                .map(row -> row.get("steelyard_file") + ":" + row.get("steelyard_row"))
                .toList();
    }

    private static List<String> skipped(Season season) throws Exception {
        return season.records(season.report("skipped.csv")).stream()
                .map(row -> row.get("file") + ":" + row.get("row") + " " + row.get("kind"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "FIRST | a:2 a:3 a:4 a:5     | b:3     | b:2 repeated",
                "LAST  | a:4 a:5 b:2 b:3     | a:3     | a:2 repeated",
                "NONE  | a:2 a:4 a:5         | a:3 b:3 | b:2 repeated",
                "ALL   | a:2 a:3 a:4 a:5 b:2 b:3 | -   | -"
            })
    void thePolicySaysWhichRowStands(DuplicateRule rule, String flights, String rejected, String skipped)
            throws Exception {
        Season season = season();
        RunFacts facts = season.audit(rule, 3);
        assertThat(flights(season)).isEqualTo(names(flights));
        assertThat(rejected(season)).isEqualTo(names(rejected));
        assertThat(skipped(season))
                .isEqualTo(skipped == null ? List.of() : List.of("season-" + skipped.replaceFirst(":", ".csv:")));
        assertThat(facts.rowsSeen()).isEqualTo(6);
    }

    private static List<String> names(String rows) {
        List<String> names = new ArrayList<>();
        for (String row : rows == null ? new String[0] : rows.split(" ", -1)) {
            names.add("season-" + row.replaceFirst(":", ".csv:"));
        }
        return names;
    }

    @Test
    void theReasonsNameTheOtherRowAndTellRepeatedFromDifferentOnes() throws Exception {
        Season season = season();
        RunFacts facts = season.audit(DuplicateRule.FIRST, 2);
        assertThat(facts.skippedRows().first())
                .extracting(row -> row.message())
                .containsExactly("season-b.csv:2: the flight stands in season-a.csv:2 cell for cell");
        CSVRecord row = season.records(season.report("rejected.csv")).get(0);
        assertThat(row.get("steelyard_reasons"))
                .matches("the flight stands in season-a\\.csv:3, too, with other cells; by the policy 'first stands'"
                        + " \\(value 'J-1[0-9]+ 2026-04-01 QI-J..'; expected each flight in one row\\)");
        assertThat(row.get("pilot")).isEqualTo("other");
    }

    @Test
    void flightsThatAllCountAreToldOf() throws Exception {
        RunFacts facts = season().audit(DuplicateRule.ALL, 2);
        assertThat(facts.inputs().get(1).notes())
                .anyMatch(note -> note.startsWith("flights that stand in an earlier row, too, and count again by the"
                        + " policy 'all count': 1 cell for cell, 1 with other cells; the first: J-1"));
    }

    @Test
    void anotherDateTailOrPlaceIsAnotherFlightAndBlankPlacesAreNot() throws Exception {
        List<String> lines = new ArrayList<>(Season.house(1));
        String line = lines.get(1);
        String[] cells = line.split(",", -1);
        lines.add(line.replace("2026-04-01", "2026-04-02"));
        lines.add(line.replace(cells[2], "QI-JAA"));
        lines.add(line.replace("," + cells[3] + ",", ",ELSEW,"));
        lines.add(line.replace("," + cells[3] + "," + cells[4] + ",", ",,,"));
        Season season = new Season(folder).with("season-1.csv", lines);
        season.audit();
        assertThat(flights(season)).hasSize(4);
        assertThat(rejected(season)).containsExactly("season-1.csv:6");
    }

    @ParameterizedTest
    @EnumSource(DuplicateRule.class)
    void theNumberOfThreadsDoesNotChangeAByte(DuplicateRule rule) throws Exception {
        Random random = new Random(SEED);
        List<String> pool = Season.house(40);
        Season season = new Season(folder);
        for (String name : List.of("season-a.csv", "season-b.csv")) {
            List<String> lines = new ArrayList<>(pool.subList(0, 1));
            for (int i = 0; i < 150; i++) {
                String line = pool.get(1 + random.nextInt(40));
                lines.add(
                        random.nextInt(3) == 0
                                ? line.replaceFirst(",[a-z]+[0-9],", ",p" + random.nextInt(3) + ",")
                                : line);
            }
            season.with(name, lines);
        }
        List<Map<String, String>> outputs = new ArrayList<>();
        for (int threads : List.of(1, 4)) {
            season.audit(rule, threads);
            Map<String, String> files = new HashMap<>();
            for (String file : List.of("flights.csv", "rejected.csv", "skipped.csv", "run.json")) {
                files.put(file, Files.readString(season.report(file), StandardCharsets.UTF_8));
            }
            outputs.add(files);
        }
        assertThat(outputs.get(0)).isEqualTo(outputs.get(1));
        assertThat(outputs.get(0).get("flights.csv").lines().count())
                .isGreaterThan(rule == DuplicateRule.NONE ? 0 : 20);
    }

    @Test
    void manyFlightsAreFoundAgainEachAtItsOwnRow() {
        Duplicates duplicates = new Duplicates(DuplicateRule.FIRST);
        Random random = new Random(SEED);
        List<FlightKey> keys = new ArrayList<>();
        for (int i = 0; i < 20_000; i++) {
            keys.add(new FlightKey(random.nextLong(), random.nextInt(500), 1 + random.nextInt(9), i));
        }
        for (int i = 0; i < keys.size(); i++) {
            assertThat(duplicates
                            .judge(keys.get(i), new Origin("a" + i / 5000, "", i + 1))
                            .kind())
                    .isEqualTo(Duplicates.Kind.STANDS);
        }
        for (int i = 0; i < keys.size(); i += 7) {
            FlightKey key = keys.get(i);
            FlightKey other = new FlightKey(key.high(), key.low(), 0, -1);
            assertThat(duplicates.judge(key, new Origin("b", "", i + 1)).other())
                    .contains(new Origin("a" + i / 5000, "", i + 1));
            assertThat(duplicates.judge(other, new Origin("b", "", i + 1)).kind())
                    .isEqualTo(Duplicates.Kind.DIFFERS);
        }
    }
}
