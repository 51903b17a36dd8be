package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.cli.option.ExitCode;

class GradeCommandsTest {

    @TempDir
    private Path folder;

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).sorted().toList();
        }
    }

    @Test
    void aPartOfTheClassIsMarkedAndTheSameInputsGiveTheSameBytes() throws IOException {
        Path given = Path.of("data-in/class");
        Path part = Files.createDirectories(folder.resolve("part"));
        Files.copy(given.resolve("given.csv"), part.resolve("given.csv"));
        Files.copy(given.resolve("sheet-siskin.xlsx"), part.resolve("sheet-siskin.xlsx"));
        List<String> rows = Files.readAllLines(given.resolve("sheets.csv"));
        Files.write(part.resolve("sheets.csv"), rows.subList(0, 6));
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        assertThat(run("grade", part.toString(), "-o", one.toString())).isZero();
        assertThat(run("grade", part.toString(), "-o", two.toString())).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString()).contains("6 sheets marked").contains("grades.xlsx, grades.csv, students/");
        List<Path> written = files(one);
        assertThat(written).hasSize(8 + 1);
        for (Path file : written) {
            assertThat(two.resolve(one.relativize(file))).hasSameBinaryContentAs(file);
        }
    }

    @Test
    void theLoadingMayStandInTheRowAndANameThatLooksLikeAFormulaIsText() throws IOException {
        Path sheets = folder.resolve("row.csv");
        Files.write(
                sheets,
                List.of(
                        "student,flight,date,tail,flaps,takeoff-mass (kg),takeoff-cg (% MAC),"
                                + "claimed-takeoff-mass (kg),claimed-trim (nose-up),claimed-verdict",
                        "=Rail(),T1,2026-01-01,QI-JAA,5,60000,24,60000,0.8 UP,in",
                        "Smew,T1,2026-01-01,QI-JAA,5,60000,24,sixty,0.9 DN,in",
                        ",T1,2026-01-01,QI-JAA,5,60000,24,,,",
                        "Scoter,T1,2026-01-01,QI-XXX,5,60000,24,60000,,"));
        assertThat(run("grade", sheets.toString(), "-o", folder.toString())).isZero();
        assertThat(err.toString())
                .contains("row.csv:3:take-off mass: the figure of Smew cannot be read (value 'sixty'; expected")
                .contains("row.csv:5:tail: unknown tail (value 'QI-XXX'");
        List<String> lines = Files.readAllLines(folder.resolve("row/grades.csv"));
        assertThat(lines).hasSize(4);
        assertThat(lines.get(1)).startsWith("'=Rail(),T1,row.csv:2,QI-JAA,");
        assertThat(lines.get(2)).contains("nose up for nose down").contains("unreadable");
        assertThat(lines.get(3)).startsWith(",T1,row.csv:4,QI-JAA,0,").contains("nothing entered");
        assertThat(files(folder.resolve("row/students")))
                .hasSize(3)
                .allSatisfy(page -> assertThat(page).content().contains("For simulation, training and analysis only."));
    }

    @Test
    void aSheetOfAnExerciseThatIsNotThereIsToldAndTheOthersAreMarked() throws IOException {
        Files.copy(Path.of("data-in/class/given.csv"), folder.resolve("given.csv"));
        Files.writeString(
                folder.resolve("sheets.csv"), "student,flight,claimed-verdict\nSmew,X1,in limits\nScaup,X9,out\n");
        assertThat(run("grade", folder.resolve("sheets.csv").toString(), "-o", folder.toString(), "-n", "late"))
                .isZero();
        assertThat(err.toString())
                .contains("sheets.csv:3:exercise: the sheet of Scaup answers no exercise that is known (value 'X9';"
                        + " expected one of X1, X2, X3, X4)");
        assertThat(files(folder.resolve("late/students"))).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource({
        "grade;no-such-folder, there is no such file or folder",
        "grade;data-in/demo;-m;nowhere, nowhere",
        "make-exercises;jet999, There is no type 'jet999'; there are",
        "make-exercises;single4;-d;out-at-zero-fuel;-k;1, No loading of single4 was found for 'out-at-zero-fuel'",
        "make-exercises;jet180;-d;hard, '--difficulty: 'hard' is unknown; expected inside, marginal'",
        "make-exercises;jet180;--cg;feet, '--cg: 'feet' is unknown; expected percent-mac, arm or index'",
        "make-exercises;jet180;-k;0, --count: 0 is not possible; expected 1 to 500",
    })
    void whatCannotBeDoneIsSaidWithExitCodeTwo(String line, String message) {
        assertThat(run(line.split(";", -1))).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains(message.replaceAll("^'|'$", ""));
    }

    @Test
    void exercisesComeBackAsBlankSheetsWithKeyAndAreMarkedByIt() throws IOException {
        Path made = folder.resolve("made");
        String[] args = {
            "make-exercises", "prop70", "-k", "3", "-d", "inside,last-minute-change,load-shift", "-o", made.toString()
        };
        assertThat(run(args)).isZero();
        List<Path> written = files(made);
        assertThat(written)
                .extracting(path -> made.relativize(path).toString().replace('\\', '/'))
                .containsExactly(
                        "blank/x1.xlsx",
                        "blank/x2.xlsx",
                        "blank/x3.xlsx",
                        "exercises.html",
                        "given.csv",
                        "key.html",
                        "outputs.json");
        assertThat(made.resolve("key.html"))
                .content()
                .contains("Least load to move:")
                .contains("CG arm = ")
                .contains("traffic load allowed = ");
        assertThat(made.resolve("exercises.html")).content().contains("Last-minute change:");
        assertThat(run("grade", made.resolve("blank").toString(), "-o", folder.toString()))
                .isZero();
        assertThat(out.toString()).contains("3 sheets marked, 0 passed");
        assertThat(err.toString()).isEmpty();
    }
}
