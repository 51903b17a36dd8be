package org.steelyard.read.heading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.steelyard.read.row.Fixtures.MAP;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.samples.Plain;

class MapChoiceTest {

    private static final ColumnMap DUTCH = Fixtures.map(
            "dutch",
            Fixtures.key("Vlucht", Field.FLIGHT),
            Fixtures.date("Datum", "dd-MM-yyyy"),
            Fixtures.key("Toestel", Field.TAIL),
            Fixtures.text("Van", Field.FROM));
    private static final ColumnMap SMALL = Fixtures.map(
            "small",
            Fixtures.key("Flight", Field.FLIGHT),
            Fixtures.key("Date", Field.DATE),
            Fixtures.key("Tail", Field.TAIL));

    @TempDir
    private Path folder;

    private String chosen(String name, String headings, ColumnMap... maps) throws IOException {
        return ReadAll.text(folder, name, headings + "\n", maps).mapName();
    }

    @Test
    void theMapWhoseHeadingsAreThereIsChosen() throws IOException {
        assertThat(chosen("s.csv", "Vlucht;Datum;Toestel;Pax", MAP, DUTCH)).isEqualTo("dutch");
        assertThat(chosen("s.csv", "Flight;Date;Tail;Pax", DUTCH, MAP)).isEqualTo("club");
    }

    @Test
    void ofSeveralTheOneThatKnowsTheMostHeadingsIsChosenAndElseTheFirst() throws IOException {
        assertThat(chosen("s.csv", "Flight;Date;Tail;Pax", SMALL, MAP)).isEqualTo("club");
        assertThat(chosen("s.csv", "Flight;Date;Tail", SMALL, MAP)).isEqualTo("small");
        assertThat(chosen("s.csv", "Flight;Date;Tail", MAP, SMALL)).isEqualTo("club");
    }

    @Test
    void theNameOfTheFileGoesBeforeItsHeadings() throws IOException {
        ColumnMap forLogs = Fixtures.forFiles(SMALL, "log-*.csv", "*.tsv");
        assertThat(chosen("LOG-5.csv", "Flight;Date;Tail;Pax", forLogs, MAP)).isEqualTo("small");
        assertThat(chosen("other.csv", "Flight;Date;Tail;Pax", forLogs, MAP)).isEqualTo("club");
    }

    @Test
    void theMapAskedForGoesBeforeAll() throws IOException {
        Path file = Files.writeString(folder.resolve("log-5.csv"), "Flight;Date;Tail;Pax\n");
        ReadOptions options = new ReadOptions(
                List.of(Fixtures.forFiles(SMALL, "log*"), MAP),
                Optional.of("club"),
                Optional.empty(),
                Optional.empty());
        assertThat(ReadAll.of(file, options).mapName()).isEqualTo("club");
        ReadOptions unknown =
                new ReadOptions(List.of(SMALL, MAP), Optional.of("x"), Optional.empty(), Optional.empty());
        assertThat(ReadAll.of(file, unknown).problems())
                .containsExactly("log-5.csv: there is no such heading map (value 'x'; expected one of small, club)");
    }

    @Test
    void whereNoMapFitsTheNearestIsNamedWithWhatItRequires() throws IOException {
        assertThat(ReadAll.text(folder, "s.csv", "Vlucht;Dag;Toestel;Van;Flight\n", MAP, DUTCH)
                        .problems())
                .containsExactly(
                        "s.csv:1: no heading map fits; the nearest, 'dutch', requires 'Datum' (value 'Vlucht, Dag,"
                                + " Toestel, Van, Flight'; expected a heading map for this file; 'steelyard propose-map' drafts one)");
    }

    @Test
    void aMapWithoutAFieldThatEveryRowNeedsFitsNothing() throws IOException {
        ColumnMap map = Fixtures.map("odd", Fixtures.text("Flight", Field.FLIGHT), Fixtures.text("Date", Field.DATE));
        assertThat(ReadAll.text(folder, "s.csv", "Flight;Day\n", map).problems())
                .containsExactly(
                        "s.csv:1: required headings are missing: 'Date', '(none in the map for tail)'"
                                + " (value 'Flight, Day'; expected every required heading of the heading map 'odd'; 'steelyard propose-map' drafts one)");
    }

    @Test
    void twoMapsThatFitEquallyWellAndDifferAreRefusedWithWhatTellsThemApart() throws IOException {
        ColumnMap kg = Fixtures.with(SMALL, Fixtures.rule("Fuel", Field.FUEL, "", ColumnUnit.KG));
        ColumnMap lb = named("pounds", Fixtures.with(SMALL, Fixtures.rule("Fuel", Field.FUEL, "", ColumnUnit.LB)));
        assertThat(ReadAll.text(folder, "s.csv", "Flight;Date;Tail;Fuel\n", kg, lb)
                        .problems())
                .containsExactly("s.csv:1: the heading maps 'small' and 'pounds' fit equally well, but differ in the"
                        + " column 'Fuel' (value 'Flight, Date, Tail, Fuel'; expected --map with the name of one, or"
                        + " 'files' in the maps that tell the sources apart)");
        assertThat(ReadAll.text(folder, "s.csv", "Flight;Date;Tail\n", kg, lb).mapName())
                .isEqualTo("small");
        assertThat(ReadAll.text(folder, "t.csv", "Flight;Date;Tail;Fuel\n", kg, Fixtures.forFiles(lb, "t.*"))
                        .mapName())
                .isEqualTo("pounds");
        assertThat(ReadAll.text(
                                folder,
                                "s.csv",
                                "Flight;Date;Tail;Fuel\n",
                                kg,
                                named("comma", Fixtures.withDecimalComma(kg)))
                        .problems())
                .singleElement()
                .asString()
                .contains("but differ in how numbers are written");
    }

    @Test
    void ofTwoMapsForTheNameOfAFileTheOneWhoseHeadingsAreThereIsTaken() throws IOException {
        ColumnMap dutch = Fixtures.forFiles(DUTCH, "log*");
        ColumnMap small = Fixtures.forFiles(SMALL, "*.csv");
        assertThat(chosen("log.csv", "Flight;Date;Tail;Van", dutch, small)).isEqualTo("small");
        assertThat(chosen("log.csv", "Vlucht;Datum;Toestel;Van", dutch, small)).isEqualTo("dutch");
    }

    private static ColumnMap named(String name, ColumnMap map) {
        return Plain.columnMap(
                name,
                map.filePatterns(),
                map.charset(),
                map.delimiter(),
                map.decimalComma(),
                map.unknownColumns(),
                map.columns());
    }

    @ParameterizedTest
    @CsvSource({
        "season-*.csv, Season-2024.CSV, true",
        "season-?.csv, season-12.csv, false",
        "season-??.csv, season-12.csv, true",
        "*, anything, true",
        "*.csv, a.csv.txt, false",
        "a*b*c, aXbbYc, true",
        "a.csv, axcsv, false"
    })
    void aPatternMatchesTheWholeName(String pattern, String name, boolean matches) {
        assertThat(MapChoice.matches(pattern, name)).isEqualTo(matches);
    }

    @Test
    void aPatternOfManyStarsTakesNoTime() {
        String name = "a".repeat(200) + ".csv";
        assertTimeoutPreemptively(Duration.ofSeconds(5), () -> {
            assertThat(MapChoice.matches("*a".repeat(60) + "*.xlsx", name)).isFalse();
            assertThat(MapChoice.matches("*a".repeat(60) + "*.csv", name)).isTrue();
        });
    }

    @Test
    void patternsMatchAsPlainSearchingSays() {
        long seed = 20261130;
        Random random = new Random(seed);
        for (int i = 0; i < 5_000; i++) {
            String pattern = drawn(random, "ab?*", 6);
            String name = drawn(random, "ab", 7);
            String regex = pattern.replace("?", ".").replace("*", ".*");
            assertThat(MapChoice.matches(pattern, name))
                    .as(pattern + " for " + name + ", seed " + seed)
                    .isEqualTo(name.matches(regex));
        }
    }

    private static String drawn(Random random, String letters, int most) {
        StringBuilder text = new StringBuilder();
        for (int i = random.nextInt(most + 1); i > 0; i--) {
            text.append(letters.charAt(random.nextInt(letters.length())));
        }
        return text.toString();
    }

    @Test
    void aFileSeparatedOtherwiseThanItsMapDeclaresIsReadByThatMapAllTheSame() throws IOException {
        ColumnMap comma = declared(SMALL, ',');
        assertThat(chosen("log.tsv", "Flight\tDate\tTail\tVan", comma)).isEqualTo("small");
        assertThat(chosen("log.csv", "Flight;Date;Tail;Van", comma)).isEqualTo("small");
    }

    private static ColumnMap declared(ColumnMap map, char delimiter) {
        return Plain.columnMap(
                map.name(),
                map.filePatterns(),
                map.charset(),
                Optional.of(delimiter),
                map.decimalComma(),
                map.unknownColumns(),
                map.columns());
    }
}
