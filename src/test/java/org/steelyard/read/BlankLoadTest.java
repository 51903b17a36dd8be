package org.steelyard.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.BlankLoad;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** Blank zones, holds, tanks and totals, by what the heading map says that a blank means. */
class BlankLoadTest {

    private static final EdgeTable EDGES = new EdgeTable(BlankLoadTest.class);
    private static final String HEADINGS = "Flight;Date;Tail;Taxi;Trip;";
    private static final String FLIGHT = "T1;2024-05-01;SX-BAA;100;1500;";
    private static final String PLACES = "Pax A;Pax B;Children B;Hold 1;Hold 2;Hold 3;Bags 2;Left;Right";

    @TempDir
    private Path folder;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    /** The map with a word for all columns, and with another for one of them. */
    private static ColumnMap saying(BlankLoad all, String heading, BlankLoad one) {
        List<ColumnRule> rules = Fixtures.MAP.columns().stream()
                .map(rule -> new ColumnRule(
                        rule.heading(),
                        rule.field(),
                        rule.place(),
                        rule.category(),
                        rule.unit(),
                        rule.dateFormats(),
                        rule.required(),
                        rule.heading().equals(heading) ? one : BlankLoad.NOT_SAID))
                .toList();
        return new ColumnMap(
                "club",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                rules,
                SourceForm.FLIGHTS,
                "",
                ColumnMap.MergedCells.FIRST_ROW,
                all);
    }

    private ReadAll read(ColumnMap map, String headings, String cells) throws IOException {
        return ReadAll.text(folder, "s.csv", HEADINGS + headings + "\n" + FLIGHT + cells + "\n", map);
    }

    /** What became of the row: the headings that count as none unsaid, or the columns at fault. */
    private String outcome(ColumnMap map, String headings, String cells) throws IOException {
        ReadAll read = read(map, headings, cells);
        return Stream.concat(
                        read.accepted().stream()
                                .map(Loading::blanksAsNone)
                                .map(blanks -> blanks.isEmpty() ? "accepted" : "noted: " + String.join(", ", blanks)),
                        read.rejected().stream()
                                .map(row -> "rejected: "
                                        + String.join(
                                                ", ",
                                                row.problems().stream()
                                                        .map(problem ->
                                                                problem.column().isEmpty()
                                                                        ? problem.reason()
                                                                        : problem.column())
                                                        .toList())))
                .toList()
                .get(0);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "every cell filled | 10;20;0;100;0;50;0;1500;1600 | accepted | accepted | accepted",
                "a blank hold | 10;20;0;100;;50;;1500;1600 | noted: Hold 2 | accepted | rejected: Hold 2",
                "a blank zone | 10;;;100;0;50;0;1500;1600 | noted: Pax B | accepted | rejected: Pax B",
                "adults in a zone, its children blank | 10;20;;100;0;50;0;1500;1600 | accepted | accepted | accepted",
                "bags in a hold, its mass blank | 10;20;0;100;;50;3;1500;1600 | accepted | accepted | accepted",
                "a blank tank | 10;20;0;100;0;50;0;1500; | noted: Right | accepted | rejected: Right",
                "no passengers at all | ;;;100;0;50;0;1500;1600 | noted: Pax A, Pax B | accepted | rejected: Pax A, Pax B",
                "no hold at all | 10;20;0;;;;;1500;1600 | noted: Hold 1, Hold 2, Hold 3 | accepted"
                        + " | rejected: Hold 1, Hold 2, Hold 3",
                "no load at all | ;;;;;;;1500;1600 | rejected: no load is given | rejected: no load is given"
                        + " | rejected: no load is given"
            })
    void aBlankPlaceMeansWhatTheMapSays(String what, String cells, String unsaid, String none, String missing)
            throws IOException {
        BlankLoad[] words = {BlankLoad.NOT_SAID, BlankLoad.NONE, BlankLoad.MISSING};
        String[] expected = {unsaid, none, missing};
        for (int i = 0; i < words.length; i++) {
            EDGES.row(
                    EdgeTopic.BLANK_LOAD,
                    what + ", the map " + (words[i].label().isEmpty() ? "silent" : "saying " + words[i].label()),
                    expected[i],
                    outcome(saying(words[i], "", BlankLoad.NOT_SAID), PLACES, cells));
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "NONE    | Hold 2     | MISSING | 10;20;0;100;;50;;1500;1600   | rejected: Hold 2",
                "NONE    | Children B | MISSING | 10;20;;100;0;50;0;1500;1600  | rejected: Children B",
                "MISSING | Hold 2     | NONE    | 10;20;0;100;;50;;1500;1600   | accepted",
                "MISSING | Hold 2     | NONE    | 10;20;0;;;50;;1500;1600      | rejected: Hold 1",
                "NOT_SAID| Hold 2     | NONE    | 10;;;100;;50;;1500;1600      | noted: Pax B"
            })
    void aColumnMaySayOtherwise(BlankLoad map, String heading, BlankLoad column, String cells, String expected)
            throws IOException {
        EDGES.row(
                EdgeTopic.BLANK_LOAD,
                "map " + (map.label().isEmpty() ? "silent" : map.label()) + ", column " + heading + " " + column.label()
                        + ", cells " + cells,
                expected,
                outcome(saying(map, heading, column), PLACES, cells));
    }

    @Test
    void aPartInTotalIsBlankAsAWhole() throws IOException {
        ColumnMap silent = saying(BlankLoad.NOT_SAID, "", BlankLoad.NOT_SAID);
        String totals = "Pax;Infants;Load;Bags;Fuel";
        assertThat(outcome(silent, totals, "30;;500;;3000")).isEqualTo("accepted");
        assertThat(outcome(silent, totals, "30;;;;3000")).isEqualTo("noted: Load");
        assertThat(outcome(silent, totals, ";;500;;3000")).isEqualTo("noted: Pax");
        assertThat(outcome(silent, "Pax A;Pax B;Pax;Hold 1;Hold 2;Load;Fuel", ";;30;;;500;3000"))
                .isEqualTo("accepted");
        assertThat(outcome(silent, "Pax A;Pax B;Pax;Hold 1;Hold 2;Load;Fuel", "10;;10;;;500;3000"))
                .isEqualTo("noted: Pax B");
        assertThat(outcome(saying(BlankLoad.MISSING, "", BlankLoad.NOT_SAID), totals, "30;;;;3000"))
                .isEqualTo("rejected: Load");
    }

    @Test
    void aStateInPlaceOfTheLoadLeavesItsCellsBlank() throws IOException {
        ColumnMap missing = saying(BlankLoad.MISSING, "", BlankLoad.NOT_SAID);
        assertThat(outcome(missing, PLACES + ";ZFM;ZFCG", ";;;;;;;1500;1600;30000;25"))
                .isEqualTo("accepted");
        assertThat(outcome(missing, PLACES + ";ZFM;ZFCG", ";;;;;;;1500;;30000;25"))
                .isEqualTo("rejected: Right");
    }
}
