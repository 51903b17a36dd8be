package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.demo.DemoMain;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.WorkbookStandard;

/** Every kind of workbook that the program writes follows ECMA-376. */
class WorkbooksByTheStandardTest {

    private static final EdgeTable EDGES = new EdgeTable(WorkbooksByTheStandardTest.class);

    @TempDir
    private static Path folder;

    @BeforeAll
    static void write() throws IOException {
        for (String month : List.of("04", "05")) {
            Path season = Files.createDirectories(folder.resolve("loadings/in-" + month));
            List<String> rows =
                    Files.readAllLines(Path.of("data-in/demo/season-2026-" + month + ".csv"), StandardCharsets.UTF_8);
            Files.write(season.resolve("season.csv"), rows.subList(0, 250), StandardCharsets.UTF_8);
            Files.copy(Path.of("data-in/demo/club-2026.csv"), season.resolve("club-2026.csv"));
            run("audit", season.toString(), "--by", "pilot", "-o", folder.toString());
        }
        run("against", at("in-05"), at("in-04"), "-o", folder.toString());
        run("grade", "data-in/class", "-o", folder.toString());
        run("make-exercises", "jet180", "--count", "2", "-o", at("exercises"));
        run("cards", "-o", at("cards"));
        run("set", "--tail", "QI-JAA", "-f", "5", "-m", "60t", "-g", "24.5%", "-w", at("summary.xlsx"));
        DemoMain.main(new String[] {at("made"), "config"});
    }

    @AfterAll
    static void table() {
        EDGES.write();
    }

    private static String at(String name) {
        return folder.resolve(name).toString();
    }

    private static void run(String... args) {
        StringWriter said = new StringWriter();
        PrintWriter to = new PrintWriter(said, true);
        assertThat(Main.run(to, to, args)).as(said.toString()).isZero();
    }

    private static List<Path> workbooks(String in, String regex) throws IOException {
        try (Stream<Path> files = Files.walk(folder.resolve(in))) {
            return files.filter(file -> file.getFileName().toString().matches(regex))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "season.xlsx of 250 flights, in-04, season.xlsx, 1",
        "change.xlsx of two seasons, in-05-against-in-04, change.xlsx, 1",
        "grades.xlsx of a class of forty, class, grades.xlsx, 1",
        "blank load sheets of two exercises, exercises, .*.xlsx, 2",
        "trim cards of three types, cards, trim-cards.xlsx, 1",
        "load summary of one flight, ., summary.xlsx, 1",
        "the demo season's own workbook, made, ledger.*.xlsx, 1",
        "filled-in sheets of the demo class, made, sheet.*.xlsx, 3",
    })
    void everyPartFollowsItsSchemaAndThePackageIsWhole(String what, String in, String regex, int count)
            throws IOException {
        List<Path> workbooks = workbooks(in, regex);
        assertThat(workbooks).hasSize(count);
        List<String> faults = new ArrayList<>();
        for (Path workbook : workbooks) {
            faults.addAll(WorkbookStandard.faults(workbook));
        }
        assertThat(faults).isEmpty();
        EDGES.row(EdgeTopic.WORKBOOK_PARTS, what + ": faults by ECMA-376", "0", Integer.toString(faults.size()));
    }

    /** That the test above can fail: one thing changed in one part is found. */
    @ParameterizedTest
    @CsvSource({
        "xl/styles.xml, rgb=\"FF, rgb=\", 3 bytes but requires 4",
        "xl/charts/chart1.xml, <c:barDir val=\"(bar|col)\"/>, '', barDir",
        "[Content_Types].xml, <Override[^>]*styles.xml\"/>, '', of content type application/xml",
        "xl/workbook.xml, sheetId=\"2\", sheetId=\"1\", stands twice",
        "xl/workbook.xml, name=\"Marks\", name=\"overview\", stands twice",
        "xl/_rels/workbook.xml.rels, worksheets/sheet2.xml, worksheets/sheet1.xml, no relationship leads to it",
        "xl/_rels/workbook.xml.rels, worksheets/sheet2.xml, worksheets/sheet99.xml, no part worksheets/sheet99.xml",
        "xl/workbook.xml, r:id=\"rId3\", r:id=\"rId99\", no relationship rId99",
        "xl/worksheets/sheet1.xml, <mergeCell ref=\"B2:, <mergeCell ref=\"B1:, overlap",
        "xl/worksheets/sheet1.xml, <row r=\"2\", <row r=\"1\", row 1 after row 1",
        "xl/worksheets/sheet1.xml, '(<c r=\"[A-Z0-9]*\") s=\"\\d*\"', $1 s=\"9999\", that is not there",
    })
    void aFaultIsFound(String part, String regex, String replacement, String fault) throws IOException {
        Path changed = folder.resolve("changed.xlsx");
        Files.deleteIfExists(changed);
        Files.copy(workbooks("class", "grades.xlsx").get(0), changed);
        try (FileSystem zip = FileSystems.newFileSystem(changed)) {
            Path inside = zip.getPath(part);
            String before = Files.readString(inside, StandardCharsets.UTF_8);
            String after = before.replaceFirst(regex, replacement);
            assertThat(after).isNotEqualTo(before);
            Files.writeString(inside, after, StandardCharsets.UTF_8);
        }
        assertThat(WorkbookStandard.faults(changed))
                .anySatisfy(one -> assertThat(one).contains(fault));
    }

    @Test
    void anotherWritersPlainWorkbookIsRight() throws IOException {
        Path plain = folder.resolve("plain.xlsx");
        try (var book = new org.apache.poi.xssf.usermodel.XSSFWorkbook();
                var out = Files.newOutputStream(plain)) {
            book.createSheet("one").createRow(0).createCell(0).setCellValue("text");
            book.write(out);
        }
        assertThat(WorkbookStandard.faults(plain)).isEmpty();
    }
}
