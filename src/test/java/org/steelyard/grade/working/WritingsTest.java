package org.steelyard.grade.working;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.grade.mark.MadeClass;
import org.steelyard.grade.mark.MarkedItem;
import org.steelyard.grade.mark.Marker;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.read.row.Tails;
import org.steelyard.read.sheet.GradeInput;
import org.steelyard.read.sheet.GradeReader;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/**
 * Ordinary ways to write an answer, on the sample jet: 45,400, 53,400, 53,200 and 48,200 kg, all at 25 % MAC or 17 m,
 * index 40; an underload of 6,600 kg; no trim.
 */
class WritingsTest {

    private static final EdgeTable EDGES = new EdgeTable(WritingsTest.class);
    private static final Policy POLICY = Plain.policy(1, 0.5, 2, 0.2, SharingRule.BY_CAPACITY);

    @TempDir
    private Path folder;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static String marked(StudentSheet sheet, SheetItem item) {
        return marked(Exercise.of(SampleJet.loaded().loading(), POLICY), sheet, item);
    }

    private static String marked(Exercise exercise, StudentSheet sheet, SheetItem item) {
        MarkedItem one = new Marker(exercise, MadeClass.scheme())
                .mark(sheet).items().stream()
                        .filter(marked -> marked.item() == item)
                        .findFirst()
                        .orElseThrow();
        return one.outcome().label() + ": " + one.claimed();
    }

    private StudentSheet table(String headings, String cells) throws IOException, SeasonUnreadableException {
        Path file = folder.resolve("sheets.csv");
        Files.writeString(file, "student;flight;" + headings + "\nWren;X1;" + cells + "\n");
        return read(file);
    }

    private StudentSheet read(Path file) throws SeasonUnreadableException {
        GradeInput input = GradeReader.sheets(
                file,
                Tails.of(List.of()),
                ReadOptions.of(MadeClass.configuration().maps()),
                folder.resolve("given.csv"),
                path -> false);
        return input.sheets().get(0).sheet();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '"',
            value = {
                "takeoff-mass (kg) | 53 200 kg | right: 53 200 kg",
                "takeoff-mass (kg) | 53'200 | right: 53'200 kg",
                "takeoff-mass (kg) | 53,200 | right: 53,200 kg",
                "takeoff-mass (kg) | 53.200 kg | right: 53.200 kg, read as 53,200",
                "takeoff-mass (kg) | 53.200,4 | right: 53.200,4 kg",
                "takeoff-mass (kg) | 53.2 t | right: 53.2 t",
                "takeoff-mass (kg) | 117286 lb | right: 117286 lb",
                "takeoff-mass (t) | 53,2 | right: 53,2 t",
                "takeoff-mass (t) | 53,200 | right: 53,200 t, read as 53.200",
                "takeoff-mass (kg) | 53.2 kg | wrong: 53.2 kg",
                "takeoff-mass (kg) | 53 2 00 | unreadable: 53 2 00",
                "takeoff-mass (kg) | 53200 USD | unreadable: 53200 USD",
                "takeoff-mass (kg) | 53200 or 53400 | unreadable: 53200 or 53400",
                "underload (kg) | \u22126600 | wrong: -6600 kg",
                "takeoff-cg (% MAC) | 25,02 % | right: 25,02 % MAC",
                "takeoff-cg (% MAC) | 25.02 % | right: 25.02 % MAC",
                "takeoff-cg (% MAC) | 25,021 | right: 25,021 % MAC, read as 25.021",
                "takeoff-cg (m) | 17,001 | right: 17,001 m, read as 17.001",
                "takeoff-cg (mm) | 17.001 | right: 17.001 mm, read as 17,001",
                "takeoff-cg (mm) | 17,001 | right: 17,001 mm",
                "trim (nose-up) | UP 0,02 | right: UP 0,02",
                "trim (nose-up) | 0.02 down | right: 0.02 down",
                "trim (nose-up) | nose up 0.02 | right: nose up 0.02",
                "trim (nose-up) | 0.0\u00B0 UP | right: 0.0\u00B0 UP",
                "trim (nose-up) | 1 UP or 1 DN | unreadable: 1 UP or 1 DN",
                "verdict | NO \u2013 outside limits | wrong: NO \u2013 outside limits",
                "verdict | yes/ok/in | right: yes/ok/in",
                "verdict | Yes, in limits | right: Yes, in limits",
                "verdict | not out of limits | right: not out of limits",
                "verdict | no limit exceeded | right: no limit exceeded",
                "verdict | all within limits | right: all within limits",
                "verdict | not within limits | wrong: not within limits",
                "verdict | in limits / out of limits | unreadable: in limits / out of limits",
                "limited-by | MLW + trip | wrong: MLW + trip",
            })
    void anAnswerIsReadAsAPersonReadsIt(String figure, String cell, String expected)
            throws IOException, SeasonUnreadableException {
        String key = figure.replaceFirst(" .*", "");
        SheetItem item = SheetItem.ALL.stream()
                .filter(one -> one.key().equals(key))
                .findFirst()
                .orElseThrow();
        EDGES.row(
                EdgeTopic.WRITINGS,
                "'" + cell + "' under " + figure,
                expected,
                marked(table("claimed-" + figure, cell), item));
    }

    /** 6,500 kg more in hold 2 leave 100 kg: an underload of 9.250 kg may be nine or nine thousand. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "9.250 | 59700 | unreadable: 9.250 kg",
                "9.250 | 59.700 | wrong: 9.250 kg, read as 9,250",
                "9.250 | 59700,5 | wrong: 9.250 kg, read as 9,250",
                "9.250 | 59700.5 | wrong: 9.250 kg",
            })
    void whereTwoReadingsArePossibleTheOtherFiguresTellOrNeitherIsTaken(String cell, String other, String expected)
            throws IOException, SeasonUnreadableException {
        Exercise exercise = Exercise.of(SampleJet.loaded().hold(1, 6500).loading(), POLICY);
        StudentSheet sheet = table("claimed-underload (kg);claimed-takeoff-mass (kg)", cell + ";" + other);
        EDGES.row(
                EdgeTopic.WRITINGS,
                "underload '" + cell + "' kg where 100 are left, beside a take-off mass of '" + other + "'",
                expected,
                marked(exercise, sheet, SheetItem.UNDERLOAD));
    }

    @ParameterizedTest
    @CsvSource({
        "Take-off CG, 0.2502, 0.00%, % MAC, TAKEOFF_CG, right: 25.02 % MAC",
        "Take-off CG, 0.2502, 0%, % MAC, TAKEOFF_CG, right: 25.02 % MAC",
        "Take-off CG, 25.02, 0.00%, % MAC, TAKEOFF_CG, right: 25.02 % MAC",
        "Take-off CG, 25.02, 0.00, % MAC, TAKEOFF_CG, right: 25.02 % MAC",
        "Take-off mass, 53200, '#,##0', kg, TAKEOFF_MASS, right: 53200 kg",
        "Take-off mass, 53.2, 0.000, kg, TAKEOFF_MASS, 'right: 53.2 kg, read as 53,200'",
    })
    void aStoredNumberIsReadWithTheFormatOfItsCell(
            String label, double value, String format, String unit, SheetItem item, String expected)
            throws IOException, SeasonUnreadableException {
        Path file = folder.resolve("wren.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            XSSFSheet sheet = book.createSheet("Load sheet");
            words(sheet, 0, SheetForm.STUDENT, "Wren");
            words(sheet, 1, SheetForm.EXERCISE, "X1");
            words(sheet, 3, SheetForm.ASKED, SheetForm.FIGURE, SheetForm.UNIT);
            words(sheet, 4, label, "", unit);
            CellStyle style = book.createCellStyle();
            style.setDataFormat(book.createDataFormat().getFormat(format));
            Cell cell = sheet.getRow(4).getCell(1);
            cell.setCellStyle(style);
            cell.setCellValue(value);
            book.write(out);
        }
        EDGES.row(
                EdgeTopic.WRITINGS,
                "stored " + value + " with the format " + format + " in " + unit,
                expected,
                marked(read(file), item));
    }

    private static void words(XSSFSheet sheet, int row, String... cells) {
        sheet.createRow(row);
        for (int i = 0; i < cells.length; i++) {
            sheet.getRow(row).createCell(i).setCellValue(cells[i]);
        }
    }
}
