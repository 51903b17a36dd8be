package org.steelyard.report.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.grade.mark.Marker;
import org.steelyard.grade.working.Exercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.policy.MarkingScheme;
import org.steelyard.model.policy.MarkingScheme.ItemRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.report.file.Destination;
import org.steelyard.report.text.Caution;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

class GradeReportsTest {

    private static final Policy POLICY = Plain.policy(1, 0.5, 2, 0.2, SharingRule.BY_CAPACITY);
    private static final MarkingScheme SCHEME = Plain.markingScheme(
            "sample scheme",
            60,
            50,
            SheetItem.ALL.stream()
                    .map(item -> new ItemRule(item, 1.5, 0.1, 0, 1))
                    .toList());
    private static final Marker MARKER =
            new Marker(Exercise.of(SampleJet.loaded().loading(), POLICY), SCHEME);

    @TempDir
    private Path folder;

    private static MarkedSheet sheet(String student, double takeoffKg, double landingKg) {
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        if (takeoffKg > 0) {
            claims.put(
                    SheetItem.TAKEOFF_MASS, new Claim.Figure(takeoffKg, 0.5, CgMeasure.PERCENT_MAC, takeoffKg + " kg"));
            claims.put(
                    SheetItem.LANDING_MASS, new Claim.Figure(landingKg, 0.5, CgMeasure.PERCENT_MAC, landingKg + " kg"));
        }
        return MARKER.mark(Plain.studentSheet(new Origin("sheets.csv", "", 2), student, "S1", claims));
    }

    private static final List<MarkedSheet> CLASS =
            List.of(sheet("=Wren & <b>", 53200, 48200), sheet("Robin", 53400, 48400), sheet("", 0, 0));

    private void write(List<MarkedSheet> sheets) throws IOException {
        InputProblem problem = new InputProblem(
                new Origin("sheets.csv", "", 9), "tail", ProblemCode.UNKNOWN_NAME, "unknown tail", "+X", "a tail");
        GradeReports.write(sheets, List.of(problem), SCHEME, Destination.of(folder.resolve("monday")), "1.0");
    }

    private XSSFWorkbook book(String name) throws IOException {
        try (InputStream in = Files.newInputStream(folder.resolve(name))) {
            return new XSSFWorkbook(in);
        }
    }

    @Test
    void theWorkbookHoldsTheClassMarksCausesAndWhatWasNotUsed() throws IOException {
        write(CLASS);
        try (XSSFWorkbook book = book("monday/grades.xlsx")) {
            assertThat(book.sheetIterator())
                    .toIterable()
                    .extracting(sheet -> sheet.getSheetName())
                    .containsExactly("Overview", "Marks", "Causes", "Not used");
            XSSFSheet overview = book.getSheet("Overview");
            assertThat(overview.getDrawingPatriarch().getCharts()).hasSize(1);
            XSSFSheet marks = book.getSheet("Marks");
            Row row = marks.getRow(1);
            assertThat(row.getCell(0).getCellType()).isEqualTo(CellType.STRING);
            assertThat(row.getCell(0).getStringCellValue()).isEqualTo("=Wren & <b>");
            assertThat(row.getCell(0).getCellStyle().getQuotePrefixed()).isTrue();
            double sum = 0;
            for (int i = 6; i < 20; i++) {
                sum += marks.getRow(2).getCell(i).getCellType() == CellType.NUMERIC
                        ? marks.getRow(2).getCell(i).getNumericCellValue()
                        : 0;
            }
            assertThat(marks.getRow(2).getCell(2).getNumericCellValue()).isEqualTo(sum);
            assertThat(marks.getRow(2).getCell(3).getNumericCellValue()).isEqualTo(21);
            assertThat(book.getSheet("Causes").getRow(2).getCell(3).getStringCellValue())
                    .startsWith("taxi fuel not taken off");
            assertThat(book.getSheet("Not used")
                            .getRow(1)
                            .getCell(3)
                            .getCellStyle()
                            .getQuotePrefixed())
                    .isTrue();
        }
    }

    @Test
    void everySheetHasAPageThatIsSafeAndCarriesTheCaution() throws IOException {
        write(CLASS);
        assertThat(folder.resolve("monday/students/1-wren-b.html"))
                .content()
                .contains("=Wren &amp; &lt;b&gt;")
                .contains(Caution.TEXT.replace("'", "&#39;"))
                .contains("Every figure that was entered is right.");
        assertThat(folder.resolve("monday/students/2-robin.html")).content().contains("53,400 − 200 = 53,200 kg");
        assertThat(folder.resolve("monday/students/3.html")).content().contains("No figure was entered.");
    }

    @Test
    void pagesOfAnEarlierRunThatNobodyHasAnyMoreGo() throws IOException {
        write(CLASS);
        write(CLASS.subList(1, 2));
        try (Stream<Path> pages = Files.list(folder.resolve("monday/students"))) {
            assertThat(pages)
                    .extracting(path -> String.valueOf(path.getFileName()))
                    .containsExactly("1-robin.html");
        }
        try (Stream<Path> left = Files.list(folder)) {
            assertThat(left)
                    .extracting(path -> String.valueOf(path.getFileName()))
                    .containsExactly("monday");
        }
    }

    /**
     * What a student fills in: the name, mass and moment of each line, the arm too where it depends on the fuel,
     * figures.
     */
    private static List<String> frames() {
        List<String> frames = new ArrayList<>(List.of("Student", "Student 2"));
        for (String line : List.of(
                "basic mass",
                "flight crew",
                "cabin crew",
                "zone A",
                "zone B",
                "zone C",
                "hold 1",
                "hold 2",
                "hold 3")) {
            frames.addAll(List.of(line + " 2", line + " 4"));
        }
        for (String line : List.of("left tank", "right tank", "tail tank", "taxi fuel", "trip fuel")) {
            frames.addAll(List.of(line + " 2", line + " 3", line + " 4"));
        }
        SheetItem.ALL.forEach(item -> frames.add(SheetForm.label(item)));
        return frames;
    }

    @Test
    void theBlankSheetIsProtectedButForItsFrames() throws IOException {
        Loading loading = SampleJet.loaded().loading();
        MadeExercise made = new MadeExercise(Difficulty.INSIDE, loading, "", loading, java.util.Optional.empty());
        ExerciseFiles.write(List.of(made), POLICY, CgMeasure.INDEX, Destination.of(folder.resolve("made")), "1.0");
        try (XSSFWorkbook book = book("made/blank/s1.xlsx")) {
            XSSFSheet sheet = book.getSheet("Load sheet");
            assertThat(sheet.getProtect()).isTrue();
            List<String> open = new ArrayList<>();
            boolean index = false;
            for (Row row : sheet) {
                for (int i = 0; i < row.getLastCellNum(); i++) {
                    boolean free = row.getCell(i) != null
                            && !row.getCell(i).getCellStyle().getLocked();
                    if (free) {
                        open.add(row.getCell(0) + (i == 1 ? "" : " " + i));
                    }
                    assertThat(free && !row.getCell(i).toString().isEmpty()).isFalse();
                    index |= row.getCell(i) != null && row.getCell(i).toString().equals("index");
                }
            }
            assertThat(open).isEqualTo(frames());
            assertThat(index).isTrue();
            assertThat(sheet.getDataValidations()).hasSize(SheetItem.ALL.size());
            assertThat(sheet.iterator())
                    .toIterable()
                    .filteredOn(row ->
                            row.getCell(1) != null && row.getCell(1).toString().equals(SheetForm.FIGURE))
                    .hasSize(1);
        }
        assertThat(folder.resolve("made/key.html"))
                .content()
                .contains("zero fuel")
                .contains("verdict: in limits");
    }
}
