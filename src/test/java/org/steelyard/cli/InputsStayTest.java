package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.cli.option.ExitCode;

/** No command writes over what it reads, or over what this program did not write, unless it is forced. */
class InputsStayTest {

    private static final String KEPT = "mine: not to be lost\n";

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private Path season;

    @BeforeEach
    void season() throws IOException {
        season = Files.createDirectories(folder.resolve("summer")).resolve("flights.csv");
        List<String> lines = Files.readAllLines(Path.of("data-in/demo/season-2026-04.csv"), StandardCharsets.UTF_8);
        Files.write(season, lines.subList(0, 30), StandardCharsets.UTF_8);
    }

    private int run(String line) {
        out.getBuffer().setLength(0);
        err.getBuffer().setLength(0);
        return Main.run(
                new PrintWriter(out, true),
                new PrintWriter(err, true),
                line.replace("{}", folder.toString()).split(" "));
    }

    private Path mine(String name) {
        try {
            Path file = folder.resolve(name);
            Files.createDirectories(file.getParent());
            return Files.writeString(file, KEPT, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "audit {}/summer -o {} -q", // is
                "audit {}/summer -o {} -q --force",
                "audit {}/summer/flights.csv -n summer -o {} -q",
                "audit {}/summer -n . -o {} -q",
                "audit {}/year/summer -n year -o {} -q", // holds
                "audit {}/year -n summer -o {}/year -q" // lies in
            })
    void reportsAreNotPutWhereTheSeasonIs(String line) throws IOException {
        Path inner = Files.createDirectories(folder.resolve("year/summer"));
        Files.copy(season, inner.resolve("loadings.csv"));
        Files.copy(season, folder.resolve("year/loadings.csv"));
        String before = text(season);
        assertThat(run(line)).as(out + " " + err).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).containsAnyOf("-o", "--name");
        assertThat(season).hasContent(before);
        assertThat(folder.resolve("summer")).isDirectoryNotContaining("glob:**/run.json");
        try (Stream<Path> all = Files.list(inner)) {
            assertThat(all).hasSize(1);
        }
    }

    @Test
    void aFolderOfReportsInTheSeasonIsFineWhileItIsEmptyOrOurs() throws IOException {
        assertThat(run("audit {}/summer -o {}/summer -q")).as(err.toString()).isZero();
        assertThat(run("audit {}/summer -o {}/summer -q")).as(err.toString()).isZero();
        mine("summer/summer/notes.txt");
        assertThat(run("audit {}/summer -o {}/summer -q")).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains("-o");
    }

    @Test
    void outputsAmongInputsArePassedOverWithAWord() throws IOException {
        assertThat(run("audit {}/summer -o {}/reports")).as(err.toString()).isZero();
        Path reports = folder.resolve("reports/summer");
        Files.copy(season, reports.resolve("loadings.csv"));
        assertThat(run("audit {}/reports/summer -n again -o {}/other"))
                .as(err.toString())
                .isZero();
        assertThat(out.toString()).contains("flights.csv: an output of this program");
        assertThat(text(folder.resolve("other/again/run.json"))).contains("\"rows\"", "\"seen\" : 29");
        assertThat(run("audit {}/reports/summer/rejected.csv -n summer -o {}/reports -q"))
                .isEqualTo(ExitCode.CANNOT);
    }

    @Test
    void sheetsAreNotMarkedOverThemselves() throws IOException {
        Path grades = folder.resolve("class/grades.csv");
        Files.createDirectories(grades.getParent());
        Files.copy(Path.of("data-in/class/sheets.csv"), grades);
        String before = text(grades);
        String line = "grade {}/class -g data-in/class/given.csv -o {}";
        assertThat(run(line)).as(out.toString()).isEqualTo(ExitCode.CANNOT);
        assertThat(grades).hasContent(before);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "audit {}/summer -o {}/reports -q > reports/summer/statistics.csv",
                "audit {}/summer -o {}/reports -q > reports/summer/room.csv --room",
                "grade data-in/class/sheets.csv -n class -o {}/reports > reports/class/grades.csv",
                "cards -o {}/cards > cards/trim-cards.html",
                "make-exercises jet180 --count 1 -o {}/made > made/given.csv",
                "check-config --brief --write {}/types > types/type-jet180.html",
                "set --type jet180 -f 5 -g 24.5% --write {}/s.html > s.html",
                "set --type jet180 -f 5 -g 24.5% --write {}/s.xlsx > s.xlsx",
                "curtail jet180 --page {}/p.html > p.html",
                "curtail jet180 --section {}/type.yaml > type.yaml",
                "estimate-scale single4 --section {}/t.yaml > t.yaml",
                "propose-map {}/summer/flights.csv --write {}/m.yaml > m.yaml",
                "against {}/summer {}/summer -o {}/a > a/summer-against-summer/change.csv"
            })
    void whatThisProgramDidNotWriteIsKeptUnlessForced(String row) throws IOException {
        String[] parts = row.split(" > ", 2);
        String file = parts[1].split(" ", 2)[0];
        String line = parts[0] + parts[1].substring(file.length());
        Path mine = mine(file);
        assertThat(run(line)).as(out + " " + err).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains(mine.getFileName().toString(), "--force");
        assertThat(mine).hasContent(KEPT.strip());
        assertThat(run(line + " --force")).as(err.toString()).isZero();
        assertThat(Files.readAllBytes(mine)).isNotEqualTo(KEPT.getBytes(StandardCharsets.UTF_8));
        assertThat(run(line)).as("its own file is written anew: " + err).isZero();
        change(mine);
        byte[] changed = Files.readAllBytes(mine);
        assertThat(run(line)).as("changed since").isEqualTo(ExitCode.CANNOT);
        assertThat(mine).hasBinaryContent(changed);
    }

    private static void change(Path file) throws IOException {
        if (!file.toString().endsWith(".xlsx")) {
            Files.writeString(file, text(file) + "# a word of mine\n", StandardCharsets.UTF_8);
            return;
        }
        try (XSSFWorkbook book = new XSSFWorkbook(Files.newInputStream(file))) {
            book.getSheetAt(0).createRow(60).createCell(0).setCellValue("a word of mine");
            try (var changed = Files.newOutputStream(file)) {
                book.write(changed);
            }
        }
    }

    @Test
    void aSectionIsNotWrittenOverThePointsThatItComesFrom() throws IOException {
        Path points = folder.resolve("q.csv");
        Files.writeString(
                points,
                "cg,setting\n15,3\n17,2.6\n19,2.2\n21,1.8\n23,1.4\n25,1.0\n27,0.6\n29,0.2\n",
                StandardCharsets.UTF_8);
        String before = text(points);
        assertThat(run("fit-scale {}/q.csv --pairs --type jet180 -f 5 --section {}/q.csv"))
                .as(out.toString())
                .isEqualTo(ExitCode.CANNOT);
        assertThat(points).hasContent(before);
    }

    @Test
    void aTableOfRoomThatSomebodyPutThereStays() throws IOException {
        Path mine = mine("reports/summer/room.csv");
        assertThat(run("audit {}/summer -o {}/reports -q")).as(err.toString()).isZero();
        assertThat(mine).hasContent(KEPT.strip());
    }
}
