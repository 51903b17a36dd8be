package org.steelyard.report.output.csv;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.model.input.FormerRow;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.unit.GuardedText;
import org.steelyard.report.output.page.Runs;

class RejectedCsvTest {

    private static final List<String> OWN = List.of(
            "steelyard_file",
            "steelyard_sheet",
            "steelyard_row",
            "steelyard_map",
            "steelyard_round",
            "steelyard_check",
            "steelyard_reasons");

    @TempDir
    private Path reports;

    private List<CSVRecord> lines(RejectedRow... rows) throws IOException {
        return Csv.records(Runs.write(reports, List.of(), List.of(rows)).resolve("rejected.csv"));
    }

    private static List<String> headings(CSVRecord line) {
        return line.getParser().getHeaderNames();
    }

    @Test
    void aRowKeepsItsCellsItsPlaceAndAllItsReasons() throws IOException {
        Origin origin = new Origin("may.xlsx", "Sheet 1", 7);
        List<InputProblem> problems = List.of(
                new InputProblem(origin, "tail", ProblemCode.UNKNOWN_NAME, "unknown tail", "ZZ", "a tail of the fleet"),
                new InputProblem(origin, "fuel", ProblemCode.NOT_A_NUMBER, "not a number", "12,5", ""));
        CSVRecord line = lines(new RejectedRow(
                        origin, "export", List.of("tail", "fuel", "remark"), List.of("ZZ", "12,5", "=cmd"), problems))
                .get(0);
        assertThat(line.get("steelyard_file")).isEqualTo("may.xlsx");
        assertThat(line.get("steelyard_sheet")).isEqualTo("Sheet 1");
        assertThat(line.get("steelyard_row")).isEqualTo("7");
        assertThat(line.get("steelyard_map")).isEqualTo("export");
        assertThat(line.get("steelyard_reasons"))
                .isEqualTo("tail: unknown tail (value 'ZZ'; expected a tail of the fleet)"
                        + " | fuel: not a number (value '12,5')");
        assertThat(line.get("tail")).isEqualTo("ZZ");
        assertThat(line.get("fuel")).isEqualTo("12,5");
        assertThat(line.get("remark")).isEqualTo("'=cmd");
    }

    @Test
    void columnsAreTheHeadingsOfAllFilesInOrderOfFirstAppearance() throws IOException {
        List<CSVRecord> lines = lines(
                Runs.rejected(2, List.of("tail", "fuel"), "A", "1"),
                Runs.rejected(3, List.of("fuel", "date"), "2", "B"),
                Runs.rejected(4, List.of("tail", "fuel"), "C", "3"));
        assertThat(headings(lines.get(0)))
                .containsExactlyElementsOf(
                        Stream.concat(OWN.stream(), Stream.of("tail", "fuel", "date", RejectedCsv.EXTRA_CELLS))
                                .toList());
        assertThat(lines).extracting(line -> line.get("fuel")).containsExactly("1", "2", "3");
        assertThat(lines).extracting(line -> line.get("tail")).containsExactly("A", "", "C");
        assertThat(lines).extracting(line -> line.get("date")).containsExactly("", "B", "");
    }

    @Test
    void cellsWithoutAHeadingOfTheirOwnAreKept() throws IOException {
        CSVRecord line = lines(Runs.rejected(2, List.of("tail", "", "tail"), "A", "b;c", "d", "e\\f", ""))
                .get(0);
        assertThat(line.get("tail")).isEqualTo("A");
        assertThat(line.get(RejectedCsv.EXTRA_CELLS)).isEqualTo("b\\;c; d; e\\\\f");
    }

    @Test
    void aShortRowLeavesTheRestEmpty() throws IOException {
        CSVRecord line = lines(Runs.rejected(2, List.of("tail", "fuel"), "A")).get(0);
        assertThat(line.get("fuel")).isEmpty();
    }

    @Test
    void aRowThatIsRejectedAgainKeepsItsFirstPlaceAndCheckInANewRound() throws IOException {
        Origin first = new Origin("may.csv", "", 7);
        Origin here = new Origin("rejected.csv", "", 2, Optional.of(first));
        RejectedRow again = new RejectedRow(
                here,
                "export",
                List.of("tail", RejectedCsv.EXTRA_CELLS),
                List.of("A", "x; y"),
                List.of(new InputProblem(here, "tail", ProblemCode.UNKNOWN_NAME, "unknown tail", "A", "a tail")),
                Optional.of(new FormerRow(first, 2, "abcabcabcabcabca")));
        CSVRecord line = lines(again).get(0);
        assertThat(headings(line)).doesNotHaveDuplicates().hasSize(9);
        assertThat(line.toList())
                .containsExactly(
                        "may.csv",
                        "",
                        "7",
                        "export",
                        "3",
                        "abcabcabcabcabca",
                        "tail: unknown tail (value 'A'; expected a tail)",
                        "A",
                        "x; y");
    }

    @Test
    void theCheckTellsCellsApartAndIsOfLettersAlone() throws IOException {
        List<CSVRecord> lines = lines(
                Runs.rejected(2, List.of("a", "b"), "1", "23"),
                Runs.rejected(3, List.of("a", "b"), "12", "3"),
                Runs.rejected(4, List.of("a", "b"), "1", "23"));
        List<String> checks =
                lines.stream().map(line -> line.get("steelyard_check")).toList();
        assertThat(checks).allMatch(check -> check.matches("[a-p]{16}"));
        assertThat(checks.get(0)).isEqualTo(checks.get(2)).isNotEqualTo(checks.get(1));
        assertThat(lines).extracting(line -> line.get("steelyard_round")).containsOnly("1");
    }

    @Test
    void oddTextComesBackAsItWas() throws IOException {
        List<String> cells = List.of(
                "a,b",
                "say \"so\"",
                "two\nlines\r\nand more",
                "\u05E9\u05DC\u05D5\u05DD",
                "'=1",
                "-0.5",
                "-0.5-1",
                " ");
        List<String> headings = List.of("1", "2", "3", "4", "5", "=6", "7", "8");
        CSVRecord line =
                lines(Runs.rejected(2, headings, cells.toArray(String[]::new))).get(0);
        assertThat(line.toList().subList(7, 15).stream().map(GuardedText::free)).containsExactlyElementsOf(cells);
        assertThat(headings(line).subList(7, 15).stream().map(GuardedText::free))
                .containsExactlyElementsOf(headings);
        assertThat(line.get("'=6")).isEqualTo("-0.5");
    }

    @Test
    void withoutRejectedRowsThereAreHeadingsOnly() throws IOException {
        assertThat(lines()).isEmpty();
        assertThat(Runs.text(reports.resolve("2025/rejected.csv")))
                .isEqualTo(String.join(",", OWN) + "," + RejectedCsv.EXTRA_CELLS + "\n");
    }
}
