package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/**
 * A class that hands in more than it should, or is asked for less than the scheme marks. The loading is a take-off
 * state of 60,000 kg at 24 % MAC, whose figures stand in the row itself.
 */
class GradeClassTest {

    private static final EdgeTable EDGES = new EdgeTable(GradeClassTest.class);
    private static final String HEADINGS = "student,flight,date,tail,flaps,takeoff-mass (kg),takeoff-cg (% MAC),"
            + "claimed-takeoff-mass (kg),claimed-takeoff-cg (% MAC)";

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @BeforeEach
    void classOfThreeSheets() throws IOException {
        Files.write(
                folder.resolve("monday.csv"),
                List.of(
                        HEADINGS,
                        row("Robin", "T1", 61000, 24),
                        row("Wren", "T1", 60000, 24),
                        row(" robin", "T1", 60000, 24),
                        row("Robin", "T2", 60000, 25)));
    }

    private static String row(String student, String flight, int kg, int percentMac) {
        return student + "," + flight + ",2026-01-01,QI-JAA,5,60000,24," + kg + "," + percentMac;
    }

    private Path scheme(String name, String... lines) throws IOException {
        Path file = folder.resolve(name);
        List<String> all = new ArrayList<>(List.of(lines));
        all.addAll(List.of(
                "scheme: two figures",
                "pass: 60 %",
                "follow-through: 50 %",
                "items:",
                "  - {item: takeoff-mass, points: 1, within: 2 kg, rounding: 5 kg}",
                "  - {item: takeoff-cg, points: 3, within: 0.1 % MAC}"));
        return Files.write(file, all);
    }

    private List<String> graded(Path marking) throws IOException {
        assertThat(run(
                        "grade",
                        folder.resolve("monday.csv").toString(),
                        "--marking",
                        marking.toString(),
                        "-o",
                        folder.toString()))
                .as("%s", err)
                .isZero();
        return Files.readAllLines(folder.resolve("monday/grades.csv"));
    }

    private static String points(List<String> grades, String student) {
        int points = List.of(grades.get(0).split(",", -1)).indexOf("points");
        return String.join(
                " ",
                grades.stream()
                        .filter(line ->
                                line.strip().toLowerCase(java.util.Locale.ROOT).startsWith(student))
                        .map(line -> line.split(",", -1)[1] + ":" + line.split(",", -1)[points])
                        .toList());
    }

    // T1: 61,000 kg instead of 60,000 is worth 3 of 4 points, the right sheet 4; T2 has its CG wrong: 1 of 4
    @ParameterizedTest
    @CsvSource({
        "last stands, T1:4 T2:1",
        "first stands, T1:3 T2:1",
        "none stands, T2:1",
        "all count, T1:3 T1:4 T2:1",
        "'', T1:4 T2:1",
    })
    void ofSheetsHandedInTwiceTheSchemeSaysWhichStands(String rule, String expected) throws IOException {
        String[] key = rule.isEmpty() ? new String[0] : new String[] {"handed-in-twice: " + rule};
        EDGES.row(
                EdgeTopic.HANDED_IN_TWICE,
                "T1 handed in with 3 of 4 points, then with 4; T2 with 1; handed-in-twice: "
                        + (rule.isEmpty() ? "left out" : rule),
                expected,
                points(graded(scheme("twice.yaml", key)), "robin"));
    }

    @Test
    void thatASheetDoesNotCountIsSaidOnTerminalPageWorkbookAndTable() throws IOException {
        List<String> grades = graded(scheme("last.yaml"));
        assertThat(out.toString())
                .contains("3 sheets marked, 2 passed")
                .contains("Handed in more than once: robin, T1 twice; the last stands");
        assertThat(err.toString())
                .contains(
                        "monday.csv:2:student: the sheet gives way to monday.csv:4: T1 is handed in twice, and the last"
                                + " stands (value 'Robin'; expected one sheet of a student for each exercise)");
        assertThat(grades.get(0)).contains(",handed_in,gave_way,");
        assertThat(grades).anyMatch(line -> line.contains(",2,monday.csv:2,"));
        Path page = folder.resolve("monday/students/2-robin.html");
        assertThat(page)
                .content()
                .contains("Handed in twice: this sheet counts, and that of monday.csv:2 does not, as the last stands.");
        assertThat(words(folder.resolve("monday/grades.xlsx")))
                .contains("Handed in more than once: robin, T1 twice; the last stands.")
                .contains("the sheet gives way to monday.csv:4: T1 is handed in twice, and the last stands");
    }

    private static List<String> words(Path file) throws IOException {
        List<String> words = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            for (Sheet sheet : book) {
                for (Row row : sheet) {
                    for (Cell cell : row) {
                        words.addAll(List.of(cell.toString().split("(?<=[.]) ")));
                    }
                }
            }
        }
        return words;
    }

    @Test
    void sheetsWithoutANameAreNotOneStudents() throws IOException {
        Files.write(
                folder.resolve("monday.csv"), List.of(HEADINGS, row("", "T1", 60000, 24), row("", "T1", 60000, 24)));
        assertThat(graded(scheme("last.yaml"))).hasSize(3);
        assertThat(err.toString()).isEmpty();
    }

    @Test
    void aFigureThatNoSheetHasRoomForIsNotAskedAndCostsNothing() throws IOException {
        Files.write(
                folder.resolve("monday.csv"),
                List.of(
                        "student,flight,date,tail,flaps,takeoff-mass (kg),takeoff-cg (% MAC),claimed-takeoff-mass (kg)",
                        "Robin,T1,2026-01-01,QI-JAA,5,60000,24,60000", "Wren,T1,2026-01-01,QI-JAA,5,60000,24,"));
        List<String> grades = graded(scheme("last.yaml"));
        EDGES.row(
                EdgeTopic.HANDED_IN_TWICE,
                "a table without a column for the CG: points of a right mass, and of a blank cell",
                "1 of 1, 0 of 1",
                outOf(grades.get(1)) + ", " + outOf(grades.get(2)));
        assertThat(grades.get(1)).contains(",pass,").contains(",not asked,");
    }

    private static String outOf(String line) {
        String[] cells = line.split(",", -1);
        return cells[4] + " of " + cells[5];
    }

    @Test
    void theSchemeMayBeAnyFile() throws IOException {
        List<String> grades = graded(scheme("exam-4.yaml"));
        assertThat(folder.resolve("monday/students/1-wren.html")).content().contains("two figures");
        assertThat(outOf(grades.get(1))).isEqualTo("4 of 4");
    }

    @ParameterizedTest
    @CsvSource({
        "none.yaml, none.yaml: the file is missing",
        "bad.yaml, 'bad.yaml:1:handed-in-twice: unknown word'",
    })
    void aSchemeThatCannotBeUsedIsRefusedWithItsPlace(String name, String message) throws IOException {
        scheme("bad.yaml", "handed-in-twice: worst stands");
        int code = run(
                "grade",
                folder.resolve("monday.csv").toString(),
                "--marking",
                folder.resolve(name).toString(),
                "-o",
                folder.toString());
        assertThat(code).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains(message);
        assertThat(folder.resolve("monday")).doesNotExist();
    }

    @Test
    void anAnswerWithTwoMeaningsIsToldToTheInstructor() throws IOException {
        Path file = Files.write(
                folder.resolve("tuesday.csv"),
                List.of(HEADINGS + ",claimed-verdict", row("Robin", "T1", 60000, 24) + ",in limits / out of limits"));
        assertThat(run("grade", file.toString(), "-o", folder.toString())).isZero();
        EDGES.row(
                EdgeTopic.WRITINGS,
                "verdict 'in limits / out of limits', both left standing: told on the terminal",
                "tuesday.csv:2:verdict: the answer of Robin cannot be read (value 'in limits / out of limits';"
                        + " expected in limits or out of limits, and not both)",
                err.toString().strip());
    }
}
