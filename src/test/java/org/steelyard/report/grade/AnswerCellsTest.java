package org.steelyard.report.grade;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataValidation;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.grade.make.Difficulty;
import org.steelyard.grade.make.ExerciseMaker;
import org.steelyard.grade.make.MadeExercise;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.report.file.Destination;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** The cells for answers in blank workbooks: their formats, and what they ask about. */
class AnswerCellsTest {

    private static final EdgeTable EDGES = new EdgeTable(AnswerCellsTest.class);

    @TempDir
    private Path folder;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private Path blank(String type, CgMeasure measure, long seed) throws IOException {
        Configuration configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        ExerciseMaker maker = new ExerciseMaker(
                configuration.tails().values().stream()
                        .filter(tail -> tail.type().id().equals(type))
                        .toList(),
                configuration.policy(),
                new SplittableRandom(seed)::nextInt);
        MadeExercise made = maker.make("X1", Difficulty.INSIDE).orElseThrow();
        ExerciseFiles.write(List.of(made), configuration.policy(), measure, Destination.of(folder), "1.0");
        return folder.resolve("blank").resolve("x1.xlsx");
    }

    /** Format, kind and bounds of the check of an answer. */
    private static List<String> cells(Path file) throws IOException {
        List<String> cells = new ArrayList<>();
        try (InputStream in = new FileInputStream(file.toFile());
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            XSSFSheet sheet = book.getSheetAt(0);
            for (Row row : sheet) {
                Cell label = row.getCell(0);
                if (label != null && SheetForm.item(label.toString()).isPresent()) {
                    Cell answer = row.getCell(1);
                    cells.add(SheetForm.item(label.toString()).get().key() + " "
                            + answer.getCellStyle().getDataFormatString() + " " + check(sheet, answer));
                }
            }
        }
        return cells;
    }

    private static String check(XSSFSheet sheet, Cell cell) {
        for (DataValidation one : sheet.getDataValidations()) {
            if (one.getRegions().getCellRangeAddresses()[0].isInRange(cell.getRowIndex(), cell.getColumnIndex())) {
                var constraint = one.getValidationConstraint();
                String values = constraint.getExplicitListValues() == null
                        ? constraint.getFormula1()
                                + (constraint.getFormula2() == null ? "" : " to " + constraint.getFormula2())
                        : List.of(constraint.getExplicitListValues()).toString();
                boolean forbids = one.getShowErrorBox() && one.getErrorStyle() == DataValidation.ErrorStyle.STOP;
                return (forbids ? "only " : "") + values;
            }
        }
        return "anything";
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "jet180 | PERCENT_MAC | takeoff-mass #,##0 3740 to 1496000",
                "jet180 | PERCENT_MAC | underload #,##0 -1496000 to 1496000",
                "jet180 | PERCENT_MAC | takeoff-cg 0.00 1 to 1000",
                "jet180 | ARM | takeoff-cg 0.000 -150 to 150",
                "jet180 | INDEX | takeoff-cg 0.00 -1000000 to 1000000",
                "single4 | ARM | takeoff-cg 0.00 -5906 to 5906",
                "jet180 | PERCENT_MAC | verdict @ [in limits, out of limits]",
            })
    void anAnswerHasAFormatAndACheck(String type, CgMeasure measure, String expected) throws IOException {
        List<String> cells = cells(blank(type, measure, 1));
        String key = expected.replaceFirst(" .*", "");
        EDGES.row(
                EdgeTopic.WRITINGS,
                "cell for " + key + " on a blank sheet of " + type + ", CGs as " + measure,
                expected,
                cells.stream()
                        .filter(cell -> cell.startsWith(key + " "))
                        .findFirst()
                        .orElse("none"));
    }

    @Test
    void everyAnswerIsCheckedNothingIsForbiddenAndNothingGivenAway() throws IOException {
        List<String> one = cells(blank("jet180", CgMeasure.PERCENT_MAC, 1));
        assertThat(one).hasSize(SheetItem.ALL.size()).noneMatch(cell -> cell.endsWith(" anything"));
        assertThat(one).noneMatch(cell -> cell.contains(" only "));
        List<String> other = cells(blank("jet180", CgMeasure.PERCENT_MAC, 2));
        assertThat(new TreeSet<>(one)).hasSameSizeAs(one).isEqualTo(new TreeSet<>(other));
    }
}
