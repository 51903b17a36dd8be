package org.steelyard.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;
import org.steelyard.samples.Plain;

/**
 * Workbooks as programs of others write them, with the mess that people make in them, give the flights of the text file
 * that they were made from. The README beside the files says which program wrote each.
 */
class WrittenByOthersTest {

    private static final Path FOLDER = Path.of("src/test/resources/read/written");

    private static final ColumnMap MAP = map(Fixtures.MAP.columns(), ColumnMap.MergedCells.FIRST_ROW);

    private static ColumnMap map(List<ColumnRule> rules, ColumnMap.MergedCells merged) {
        return Plain.columnMap(
                "club",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.LEAVE_OUT,
                rules.stream()
                        .map(rule -> rule.field() == Field.DATE ? Fixtures.date(rule.heading(), "uuuu-MM-dd") : rule)
                        .toList(),
                SourceForm.FLIGHTS,
                "",
                merged);
    }

    private static ReadAll read(String file, ColumnMap map) {
        return ReadAll.of(FOLDER.resolve(file), map);
    }

    private static List<Loading> flights(ReadAll read) {
        Origin same = new Origin("same", "", 1);
        return read.accepted().stream()
                .map(one -> Plain.loading(
                        same,
                        one.flight(),
                        one.tail(),
                        one.setting(),
                        one.crew(),
                        one.load(),
                        one.fuel(),
                        one.performance(),
                        one.recordedTrimUnits(),
                        one.extras()))
                .toList();
    }

    private static List<Loading> expected() {
        List<Loading> flights = flights(read("flights.csv", MAP));
        assertThat(flights).hasSize(8);
        return flights;
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "calc-plain.xlsx",
                "calc-1904.xlsx",
                "calc-messy.xlsx",
                "calc-calculated.xlsx",
                "gnumeric.xlsx",
                "xlsxwriter.xlsx",
                "excel-writer.xlsx"
            })
    void theFlightsAreThoseOfTheTextFile(String file) {
        ReadAll read = read(file, MAP);
        assertThat(flights(read)).isEqualTo(expected());
        assertThat(read.problems()).isEmpty();
    }

    @Test
    void whatIsNoFlightInAMessySheetIsListedWithItsReason() {
        ReadAll read = read("calc-messy.xlsx", MAP);
        assertThat(read.skippedRows())
                .containsExactly(
                        "calc-messy.xlsx[May]:10: a title merged across columns: 'From the islands'",
                        "calc-messy.xlsx[May]:18: totals: it begins with 'Total' and has no flight, date and tail");
        assertThat(read.skippedSheets())
                .containsExactly(
                        "calc-messy.xlsx[Old]: the sheet is hidden",
                        "calc-messy.xlsx[Notes]: there is no heading row that a heading map knows");
        assertThat(read.reasons())
                .containsExactly(
                        "calc-messy.xlsx[May]:16:Left: the cell holds an error (value '#DIV/0!'; expected a value)");
        assertThat(read.blank()).isEqualTo(3);
        assertThat(read.seen()).isEqualTo(14);
        assertThat(read.notes())
                .hasSize(5)
                .startsWith("2 filled rows above the headings in row 4 were not read")
                .contains(
                        "2 hidden rows were read like the others",
                        "hidden columns were read like the others: Hold 2",
                        "12 cells hold formulas; the results stored in the file were used")
                .anyMatch(note -> note.startsWith("columns left out: Note 1, Note 2,") && note.endsWith("Note 50"));
    }

    @Test
    void placesUnderAMergedCellAreFaultsUnlessTheMapFillsThem() {
        ReadAll first = read("calc-merged.xlsx", MAP);
        assertThat(first.flights()).containsExactly("1201", "1203", "T05", "T07", "T08");
        assertThat(first.reasons())
                .hasSize(6)
                .startsWith("calc-merged.xlsx[Merged]:3:Date: the cell is merged with another, which has the value"
                        + " (value 'B2:B3'; expected a value in a cell of its own; where text and dates go for every row"
                        + " of a merged cell, the heading map says 'merged-cells: fill down')");
        assertThat(first.rejected().get(0).cells()).startsWith("1202", "", "", "LANDB");
        ReadAll filled = read("calc-merged.xlsx", map(MAP.columns(), ColumnMap.MergedCells.FILL_DOWN));
        assertThat(flights(filled)).isEqualTo(expected());
        assertThat(filled.notes())
                .contains("6 cells under merged cells got their text or date, as the heading map says");
        assertThat(filled.skippedRows())
                .containsExactly("calc-merged.xlsx[Merged]:11: totals: no flight, date and tail, and the sums of the"
                        + " flights above");
    }

    @Test
    void headingsOverTwoRowsAreJoinedAndEverySheetIsRead() {
        ColumnMap joined = map(
                MAP.columns().stream()
                        .map(rule -> new ColumnRule(
                                switch (rule.heading()) {
                                    case "Pax A" -> "Passengers A";
                                    case "Pax B" -> "Passengers B";
                                    case "Hold 1" -> "Holds 1";
                                    case "Hold 2" -> "Holds 2";
                                    case "Left" -> "Fuel left";
                                    case "Right" -> "Fuel right";
                                    case "Taxi" -> "Fuel taxi";
                                    case "Trip" -> "Fuel trip";
                                    default -> rule.heading();
                                },
                                rule.field(),
                                rule.place(),
                                rule.category(),
                                rule.unit(),
                                rule.dateFormats(),
                                rule.required()))
                        .toList(),
                ColumnMap.MergedCells.FIRST_ROW);
        ReadAll read = read("openpyxl-two-rows.xlsx", joined);
        assertThat(flights(read)).isEqualTo(expected());
        assertThat(read.accepted().get(4).origin()).hasToString("openpyxl-two-rows.xlsx[Late]:5");
        assertThat(read.notes()).contains("sheet 'Early': 4 rows, heading map 'club'");
        assertThat(read.seen()).isEqualTo(8);
    }

    @Test
    void formulasThatNobodyCalculatedAreFaultsOfTheirRows() {
        ReadAll read = read("openpyxl-formulas.xlsx", MAP);
        assertThat(read.accepted()).isEmpty();
        assertThat(read.reasons())
                .hasSize(8)
                .startsWith("openpyxl-formulas.xlsx[Formulas]:2:Trip: the file holds no result of the formula"
                        + " (value '=1500+0'; expected a value, or a workbook saved after calculation)");
        assertThat(read.notes()).contains("8 cells hold formulas without a result");
    }

    @Test
    void aPlaceholderOfAFormulaIsNoResult() {
        ReadAll read = read("xlsxwriter.xlsx", MAP);
        assertThat(read.reasons())
                .containsExactly("xlsxwriter.xlsx[Season]:10:Trip: the file holds no result of the formula"
                        + " (value '=1000+500'; expected a value, or a workbook saved after calculation)");
        assertThat(read.notes())
                .contains(
                        "2 hidden rows were read like the others",
                        "8 cells hold formulas; the results stored in the file were used",
                        "1 cell holds a formula without a result");
    }

    @Test
    void sumsWithoutAWordAreTotals() {
        assertThat(read("excel-writer.xlsx", MAP).skippedRows())
                .containsExactly("excel-writer.xlsx[Text]:10: totals: no flight, date and tail, and the sums of the"
                        + " flights above");
    }
}
