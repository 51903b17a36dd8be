package org.steelyard.read.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SheetForm;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.input.StudentSheet;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

class GradeReaderTest {

    private static final Tails TAILS =
            Tails.of(List.of(Plain.tail("TEST-1", SampleJet.type(), MassMoment.at(40_000, 17))));

    @TempDir
    private Path folder;

    private GradeInput read(String name, String text) throws IOException, SeasonUnreadableException {
        return read(name, text, List.of(rule("Flug", Field.FLIGHT, ColumnUnit.NONE)));
    }

    private GradeInput read(String name, String text, List<ColumnRule> rules)
            throws IOException, SeasonUnreadableException {
        Path file = folder.resolve(name);
        Files.writeString(file, text);
        return read(file, rules);
    }

    private static GradeInput read(Path file, List<ColumnRule> rules) throws SeasonUnreadableException {
        ColumnMap map =
                Plain.columnMap("lehrer", List.of(), "", Optional.of(';'), true, ColumnMap.UnknownColumns.KEEP, rules);
        return GradeReader.sheets(file, TAILS, ReadOptions.of(List.of(map)), Path.of("given.csv"), path -> false);
    }

    private static ColumnRule rule(String heading, Field field, ColumnUnit unit) {
        return new ColumnRule(heading, field, "", PassengerCategory.ADULT, unit, "", false);
    }

    private static Claim.Figure figure(GradeInput input, SheetItem item) {
        return (Claim.Figure) input.sheets().get(0).sheet().claims().get(item);
    }

    @ParameterizedTest
    @CsvSource({
        "claimed-takeoff-mass (kg), 53200, TAKEOFF_MASS, 53200, 0.5",
        "claimed-takeoff-mass (kg), 53200.0, TAKEOFF_MASS, 53200, 0.05",
        "claimed-takeoff-mass (t), 53.2, TAKEOFF_MASS, 53200, 50",
        "claimed-takeoff-mass (lb), 100, TAKEOFF_MASS, 45.359237, 0.226796185",
        "claimed-underload (kg), -120, UNDERLOAD, -120, 0.5",
        "claimed-takeoff-cg (% MAC), 25.0, TAKEOFF_CG, 25, 0.05",
        "claimed-takeoff-cg (in), 669.3, TAKEOFF_CG, 17.00022, 0.00127",
        "claimed-takeoff-cg (mm), 17000, TAKEOFF_CG, 17, 0.0005",
        "claimed-takeoff-cg (index), 40.1, TAKEOFF_CG, 40.1, 0.05",
        "claimed-trim (nose-up), 0.2 DN, TRIM, -0.2, 0.05",
        "claimed-trim (nose-down), 0.2, TRIM, -0.2, 0.05",
        "claimed-takeoff-mass (kg), 53200 kg, TAKEOFF_MASS, 53200, 0.5",
    })
    void aFigureIsReadInItsUnitWithTheRoundingThatItShows(
            String heading, String cell, SheetItem item, double value, double halfStep)
            throws IOException, SeasonUnreadableException {
        GradeInput input = read("a.csv", "student,flight," + heading + "\nWren,X1," + cell + "\n");
        assertThat(input.problems()).isEmpty();
        assertThat(figure(input, item).value()).isCloseTo(value, org.assertj.core.api.Assertions.within(1e-9));
        assertThat(figure(input, item).halfStep()).isCloseTo(halfStep, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void measuresOfACgAreKeptApart() throws IOException, SeasonUnreadableException {
        GradeInput input = read("a.csv", """
                student,flight,claimed-takeoff-cg (m),claimed-landing-cg (index),claimed-ramp-cg (% MAC)
                Wren,X1,17.000,40,25
                """);
        assertThat(figure(input, SheetItem.TAKEOFF_CG).measure()).isEqualTo(CgMeasure.ARM);
        assertThat(figure(input, SheetItem.LANDING_CG).measure()).isEqualTo(CgMeasure.INDEX);
        assertThat(figure(input, SheetItem.RAMP_CG).measure()).isEqualTo(CgMeasure.PERCENT_MAC);
    }

    @Test
    void aHeadingMapWithADecimalCommaReadsLoadingAndFigures() throws IOException, SeasonUnreadableException {
        List<ColumnRule> rules = List.of(
                rule("Wer", Field.STUDENT, ColumnUnit.NONE),
                rule("Flug", Field.FLIGHT, ColumnUnit.NONE),
                rule("Tag", Field.DATE, ColumnUnit.NONE),
                rule("Flugzeug", Field.TAIL, ColumnUnit.NONE),
                rule("Masse", Field.TAKEOFF_MASS, ColumnUnit.TONNE),
                rule("Lage", Field.TAKEOFF_CG, ColumnUnit.PERCENT_MAC),
                rule("Antwort", Field.CLAIMED_TAKEOFF_MASS, ColumnUnit.TONNE));
        GradeInput input = read(
                "b.csv", "Wer;Flug;Tag;Flugzeug;Masse;Lage;Antwort\nWren;X1;2026-01-01;TEST-1;53,2;25;53,1\n", rules);
        assertThat(input.problems()).isEmpty();
        assertThat(input.sheets().get(0).loading()).isPresent();
        assertThat(figure(input, SheetItem.TAKEOFF_MASS).value()).isEqualTo(53100);
    }

    @Test
    void whatIsNoFigureIsKeptAndToldWithItsPlace() throws IOException, SeasonUnreadableException {
        GradeInput input =
                read("a.csv", "student,flight,claimed-takeoff-mass (kg)\nWren,X1,some 53200\n,,\nRobin,X1,\n");
        assertThat(input.sheets()).hasSize(2);
        assertThat(input.sheets().get(0).sheet().claims().get(SheetItem.TAKEOFF_MASS))
                .isInstanceOf(Claim.Unreadable.class);
        assertThat(input.problems())
                .extracting(InputProblem::message)
                .containsExactly("a.csv:2:take-off mass: the figure of Wren cannot be read (value 'some 53200';"
                        + " expected one number as 63587.5, alone or with its unit)");
    }

    @Test
    void anAuditTellsThatRowsOfFiguresHoldNoLoading() throws IOException {
        Path file = folder.resolve("c.csv");
        Files.writeString(file, "Wer;Antwort\nWren;53,1\n");
        ColumnMap map = Plain.columnMap(
                "lehrer",
                List.of(),
                "",
                Optional.of(';'),
                true,
                ColumnMap.UnknownColumns.KEEP,
                List.of(
                        rule("Wer", Field.STUDENT, ColumnUnit.NONE),
                        rule("Antwort", Field.CLAIMED_TAKEOFF_MASS, ColumnUnit.TONNE)));
        try (SourceFile source = SourceFile.open(file, ReadOptions.of(List.of(map)), TAILS)) {
            ParsedRow row = source.nextBatch(10).orElseThrow().parse().get(0);
            assertThat(row).isInstanceOf(ParsedRow.Rejected.class);
            assertThat(((ParsedRow.Rejected) row).row().problems().get(0).message())
                    .isEqualTo("c.csv:2: the row holds no loading (expected columns for tail, load and fuel)");
        }
    }

    /** A sheet as somebody may have changed it: a row put in above, a column put in before, text for numbers. */
    @Test
    void aFilledInSheetIsReadByItsLabelsWhereverTheyHaveGone() throws IOException, SeasonUnreadableException {
        Path file = folder.resolve("wren.xlsx");
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(file)) {
            book.createSheet("Notes").createRow(0).createCell(0).setCellValue("nothing");
            XSSFSheet sheet = book.createSheet("Load sheet");
            row(sheet, 3, "", SheetForm.STUDENT, "", "Wren");
            row(sheet, 4, "", SheetForm.EXERCISE, "X1");
            row(sheet, 8, "", SheetForm.ASKED, "", SheetForm.FIGURE, SheetForm.UNIT);
            row(sheet, 9, "", "Take-off mass", "", "53200 kg", "kg");
            row(sheet, 11, "", "Landing CG", "", "25,1", "% MAC");
            row(sheet, 12, "", "Take-off trim", "", "0.5 DN", "units, UP or DN");
            row(sheet, 13, "", "Verdict", "", "in limits", "words");
            row(sheet, 14, "", "Ramp mass", "", "many", "kg");
            row(sheet, 15, "", "Underload", "", "12", "stone");
            book.write(out);
        }
        GradeInput input = read(folder, List.of(rule("Flug", Field.FLIGHT, ColumnUnit.NONE)));
        StudentSheet sheet = input.sheets().get(0).sheet();
        assertThat(sheet.student()).isEqualTo("Wren");
        assertThat(sheet.exercise()).isEqualTo("X1");
        Map<SheetItem, Claim> claims = sheet.claims();
        assertThat(((Claim.Figure) claims.get(SheetItem.TAKEOFF_MASS)).value()).isEqualTo(53200);
        assertThat(((Claim.Figure) claims.get(SheetItem.LANDING_CG)).value()).isEqualTo(25.1);
        assertThat(((Claim.Figure) claims.get(SheetItem.TRIM)).value()).isEqualTo(-0.5);
        assertThat(claims.get(SheetItem.VERDICT)).isEqualTo(new Claim.Words("in limits"));
        assertThat(claims.get(SheetItem.RAMP_MASS)).isInstanceOf(Claim.Unreadable.class);
        assertThat(claims.get(SheetItem.UNDERLOAD))
                .isEqualTo(new Claim.Unreadable("12", "a unit of the figure beside it, not 'stone'"));
        assertThat(input.problems()).hasSize(2);
    }

    private static void row(XSSFSheet sheet, int number, String... cells) {
        Row row = sheet.createRow(number);
        for (int i = 0; i < cells.length; i++) {
            row.createCell(i).setCellValue(cells[i]);
        }
    }
}
