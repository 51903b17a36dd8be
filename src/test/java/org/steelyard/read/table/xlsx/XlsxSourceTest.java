package org.steelyard.read.table.xlsx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.steelyard.read.row.Fixtures.MAP;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Arrays;
import java.util.function.Consumer;
import org.apache.poi.openxml4j.opc.OPCPackage;
import org.apache.poi.poifs.crypt.EncryptionInfo;
import org.apache.poi.poifs.crypt.EncryptionMode;
import org.apache.poi.poifs.crypt.Encryptor;
import org.apache.poi.poifs.filesystem.POIFSFileSystem;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FormulaError;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.Field;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.Fuel;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;
import org.steelyard.read.text.NumberGrammar;

class XlsxSourceTest {

    private static final Object[] HEADINGS = {"Flight", "Date", "Tail", "Pax A", "Fuel", "Taxi", "Trip", "Pilot"};

    @TempDir
    private Path folder;

    private Path write(Workbook workbook) throws IOException {
        Path file = folder.resolve("s.xlsx");
        try (workbook;
                OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
        return file;
    }

    private static Row fill(Sheet sheet, int index, Object... values) {
        Row row = sheet.createRow(index);
        for (int i = 0; i < values.length; i++) {
            if (values[i] != null) {
                set(row.createCell(i), values[i]);
            }
        }
        return row;
    }

    private static void set(Cell cell, Object value) {
        if (value instanceof Number number) {
            cell.setCellValue(number.doubleValue());
        } else if (value instanceof LocalDate day) {
            cell.setCellValue(day);
            cell.setCellStyle(dateStyle(cell.getSheet().getWorkbook(), "dd.mm.yyyy"));
        } else if (value instanceof LocalDateTime time) {
            cell.setCellValue(time);
            cell.setCellStyle(dateStyle(cell.getSheet().getWorkbook(), "dd.mm.yyyy hh:mm"));
        } else if (value instanceof Boolean truth) {
            cell.setCellValue(truth);
        } else if (value instanceof FormulaError error) {
            cell.setCellErrorValue(error.getCode());
        } else {
            cell.setCellValue(value.toString());
        }
    }

    private static CellStyle dateStyle(Workbook workbook, String format) {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat(workbook.createDataFormat().getFormat(format));
        return style;
    }

    private static Object[] row(String flight) {
        return new Object[] {flight, LocalDate.of(2024, 5, 1), "SX-BAA", 10, 3000, 100, 1500.5, "Ann"};
    }

    private static Object[] row(String flight, int column, Object value) {
        Object[] row = row(flight);
        row[column] = value;
        return row;
    }

    /** A workbook of one sheet with headings and the given rows from the second row on. */
    private static Workbook season(Object[]... rows) {
        Workbook workbook = new XSSFWorkbook();
        Sheet sheet = workbook.createSheet("Season");
        fill(sheet, 0, HEADINGS);
        for (int i = 0; i < rows.length; i++) {
            fill(sheet, i + 1, rows[i]);
        }
        return workbook;
    }

    private ReadAll changed(Consumer<Row> change) throws IOException {
        Workbook workbook = season(row("T1"));
        change.accept(workbook.getSheetAt(0).getRow(1));
        return ReadAll.of(write(workbook), MAP);
    }

    @Test
    void numbersTextsAndDatesAreReadAsStored() throws IOException {
        ReadAll read = ReadAll.of(write(season(row("T1"), row("T2", 1, LocalDateTime.of(2024, 5, 1, 23, 15)))), MAP);
        assertThat(read.reasons()).isEmpty();
        assertThat(read.problems()).isEmpty();
        assertThat(read.notes()).isEmpty();
        assertThat(read.accepted()).allSatisfy(loading -> {
            assertThat(loading.flight().date()).isEqualTo("2024-05-01");
            assertThat(loading.fuel()).isEqualTo(new Fuel.Total(3000, 100, 1500.5));
        });
        assertThat(read.accepted())
                .extracting(loading -> loading.origin().toString())
                .containsExactly("s.xlsx[Season]:2", "s.xlsx[Season]:3");
    }

    @Test
    void inlineTextsAreRead() throws IOException {
        SXSSFWorkbook workbook = new SXSSFWorkbook(10);
        Sheet sheet = workbook.createSheet("Stream");
        fill(sheet, 0, HEADINGS);
        for (int i = 1; i <= 500; i++) {
            fill(sheet, i, row("T" + i));
        }
        ReadAll read = ReadAll.of(write(workbook), MAP);
        assertThat(read.reasons()).isEmpty();
        assertThat(read.accepted()).hasSize(500);
    }

    @Test
    void datesCountFrom1904WhereTheWorkbookSaysSo() throws IOException {
        XSSFWorkbook workbook = new XSSFWorkbook();
        workbook.getCTWorkbook().getWorkbookPr().setDate1904(true);
        Sheet sheet = workbook.createSheet("Old");
        fill(sheet, 0, HEADINGS);
        fill(sheet, 1, row("T1"));
        assertThat(sheet.getRow(1).getCell(1).getNumericCellValue()).isLessThan(45_000);
        assertThat(ReadAll.of(write(workbook), MAP).accepted().get(0).flight().date())
                .isEqualTo("2024-05-01");
    }

    @Test
    void aDateThatIsTextReadsByTheMap() throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.date("Date", "dd.MM.yyyy"));
        Path file =
                write(season(row("T1", 1, "02.05.2024"), row("T2"), row("T3", 1, "2024-05-02"), row("T4", 1, 45_413)));
        ReadAll read = ReadAll.of(file, map);
        assertThat(read.accepted())
                .extracting(loading -> loading.flight().date().toString())
                .containsExactly("2024-05-02", "2024-05-01");
        assertThat(read.reasons())
                .containsExactly(
                        "s.xlsx[Season]:4:Date: not a date (value '2024-05-02'; expected a date as dd.MM.yyyy)",
                        "s.xlsx[Season]:5:Date: not a date (value '45413'; expected a date as dd.MM.yyyy)");
    }

    @Test
    void aCellShownAsADateIsNoNumber() throws IOException {
        assertThat(changed(row -> set(row.getCell(4), LocalDate.of(2024, 1, 12)))
                        .reasons())
                .hasSize(1)
                .allMatch(
                        reason -> reason.startsWith("s.xlsx[Season]:2:Fuel: a date, not a number (value '2024-01-12'"));
    }

    @Test
    void cellsFarBeyondTheHeadingsAreKeptWithoutTheBlankOnesBetween() throws IOException {
        ReadAll read = changed(row -> {
            set(row.createCell(5_000), "far");
            set(row.createCell(16_383), 7.5);
        });
        assertThat(read.reasons())
                .containsExactly("s.xlsx[Season]:2: the row has 16384 cells, more than headings (expected 8 cells)");
        assertThat(read.rejected().get(0).cells())
                .containsExactly("T1", "2024-05-01", "SX-BAA", "10", "3000", "100", "1500.5", "Ann", "far", "7.5");
    }

    @Test
    void blankCellsFarBeyondTheHeadingsDoNoHarm() throws IOException {
        ReadAll read = changed(row ->
                row.createCell(16_383).setCellStyle(dateStyle(row.getSheet().getWorkbook(), "dd.mm.yyyy")));
        assertThat(read.reasons()).isEmpty();
        assertThat(read.accepted())
                .hasSize(1)
                .allSatisfy(loading -> assertThat(loading.fuel()).isEqualTo(new Fuel.Total(3000, 100, 1500.5)));
    }

    @Test
    void mergedCellsReachIntoARowWhoseCellsStandFarApart() throws IOException {
        Workbook workbook = season(row("T1"), row("T2", 2, null));
        Sheet sheet = workbook.getSheetAt(0);
        set(sheet.getRow(2).createCell(16_383), 7);
        sheet.addMergedRegion(new CellRangeAddress(1, 2, 2, 2));
        ReadAll read = ReadAll.of(write(workbook), MAP);
        assertThat(read.accepted()).hasSize(1);
        assertThat(read.rejected().get(0).cells())
                .containsExactly("T2", "2024-05-01", "", "10", "3000", "100", "1500.5", "Ann", "7");
    }

    @Test
    void headingsThatTakeMoreThanTwoThousandColumnsAreRefused() throws IOException {
        Workbook workbook = season(row("T1"));
        set(workbook.getSheetAt(0).getRow(0).createCell(2_000), "Gate");
        assertThat(ReadAll.of(write(workbook), MAP).problems())
                .containsExactly("s.xlsx[Season]:1: the headings take 2,001 columns (value 'Gate'; expected at most"
                        + " 2,000 columns, blank ones among them)");
    }

    @Test
    void elapsedTimeIsANumberAndATimeOfDayIsText() throws IOException {
        ReadAll read = changed(row -> {
            row.getCell(4).setCellStyle(dateStyle(row.getSheet().getWorkbook(), "[h]:mm"));
            row.getCell(7).setCellValue(0.25);
            row.getCell(7).setCellStyle(dateStyle(row.getSheet().getWorkbook(), "hh:mm"));
        });
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.Total(3000, 100, 1500.5));
        assertThat(read.accepted().get(0).extras()).containsExactly(new Extra("Pilot", "06:00"));
    }

    @Test
    void theArtefactsOfADoubleAppearAsTheyAre() throws IOException {
        ReadAll read = changed(row -> row.getCell(7).setCellValue(0.1 + 0.2));
        assertThat(read.accepted().get(0).extras()).containsExactly(new Extra("Pilot", "0.30000000000000004"));
    }

    @ParameterizedTest
    @CsvSource({
        "5.0, 5",
        "5, 5",
        "-3.50, -3.5",
        "007, 7",
        "1E3, 1000",
        "1.5E-7, 1.5E-7",
        "0.1, 0.1",
        "0.10000000000000001, 0.1",
        "123456789012345, 123456789012345",
        "-0, 0",
        "0, 0",
        "1E+999, 1E+999"
    })
    void aNumberHasItsShortestText(String stored, String shortest) {
        assertThat(XlsxCells.shortest(stored, NumberGrammar.parse(stored, '.', true)))
                .isEqualTo(shortest);
    }

    @Test
    void namesThatAreStoredAsNumbersHaveNoDecimals() throws IOException {
        Workbook workbook = season(row(null, 0, 123));
        workbook.getSheetAt(0).getRow(0).createCell(8).setCellValue("Flaps");
        workbook.getSheetAt(0).getRow(1).createCell(8).setCellValue(5);
        ReadAll read = ReadAll.of(write(workbook), MAP);
        assertThat(read.flights()).containsExactly("123");
        assertThat(read.accepted().get(0).setting().flaps()).isEqualTo("5");
    }

    @Test
    void storedNumbersDoNotCareForADecimalCommaButTextsDo() throws IOException {
        ColumnMap map = Fixtures.withDecimalComma(MAP);
        Path file = write(season(row("T1"), row("T2", 4, "3000,5"), row("T3", 4, "3000.5"), row("T4", 3, -0.5)));
        ReadAll read = ReadAll.of(file, map);
        assertThat(read.flights()).containsExactly("T1", "T2");
        assertThat(read.reasons()).hasSize(2);
        assertThat(read.rejected().get(1).cells())
                .containsExactly("T4", "2024-05-01", "SX-BAA", "-0,5", "3000", "100", "1500,5", "Ann");
    }

    @Test
    void theCellsOfARejectedRowHaveDatesAsTheMapHasThem() throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.date("Date", "dd.MM.yyyy"));
        ReadAll read = ReadAll.of(write(season(row("T1", 2, "?"))), map);
        assertThat(read.rejected().get(0).cells()).startsWith("T1", "01.05.2024", "?");
    }

    @Test
    void truthValuesAreText() throws IOException {
        ReadAll read = changed(row -> {
            row.getCell(7).setCellValue(true);
            row.getCell(3).setCellValue(false);
        });
        assertThat(read.reasons()).hasSize(1).allMatch(reason -> reason.contains("not a number (value 'FALSE'"));
    }

    @Test
    void anErrorIsAFaultWhereItsColumnMeansSomething() throws IOException {
        ReadAll used = changed(row -> set(row.getCell(4), FormulaError.NA));
        assertThat(used.reasons())
                .containsExactly("s.xlsx[Season]:2:Fuel: the cell holds an error (value '#N/A'; expected a value)");
        ReadAll carried = changed(row -> set(row.getCell(7), FormulaError.DIV0));
        assertThat(carried.accepted().get(0).extras()).containsExactly(new Extra("Pilot", "#DIV/0!"));
    }

    @Test
    void formulasGiveTheirStoredResultAndAreCounted() throws IOException {
        ReadAll read = changed(row -> {
            row.getCell(4).setCellFormula("1500*2");
            row.getCell(6).setCellFormula("B1");
            row.getSheet()
                    .getWorkbook()
                    .getCreationHelper()
                    .createFormulaEvaluator()
                    .evaluateFormulaCell(row.getCell(4));
            row.getCell(6).setCellValue(700);
            row.getCell(7).setCellFormula("CONCATENATE(\"A\",\"b\")");
            row.getSheet()
                    .getWorkbook()
                    .getCreationHelper()
                    .createFormulaEvaluator()
                    .evaluateFormulaCell(row.getCell(7));
        });
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.Total(3000, 100, 700));
        assertThat(read.accepted().get(0).extras()).containsExactly(new Extra("Pilot", "Ab"));
        assertThat(read.notes()).containsExactly("3 cells hold formulas; the results stored in the file were used");
    }

    @Test
    void aFormulaWithoutAStoredResultIsAFault() throws IOException {
        Path file = RawWorkbook.write(
                folder.resolve("s.xlsx"),
                "<row r='1'>" + texts(HEADINGS) + "</row><row r='2'>" + texts("T1", "2024-05-01", "SX-BAA")
                        + "<c r='D2'><f>1+2</f></c><c r='E2'><v>3000</v></c><c r='F2'><v>100</v></c>"
                        + "<c r='G2'><v>1500</v></c></row>",
                "");
        assertThat(ReadAll.of(file, MAP).reasons())
                .containsExactly("s.xlsx[Raw]:2:Pax A: the file holds no result of the formula (value '=1+2';"
                        + " expected a value, or a workbook saved after calculation)");
    }

    private static String texts(Object... values) {
        StringBuilder cells = new StringBuilder();
        for (Object value : values) {
            cells.append("<c t='inlineStr'><is><t>").append(value).append("</t></is></c>");
        }
        return cells.toString();
    }

    @Test
    void cellsAndRowsWithoutReferencesFollowEachOther() throws IOException {
        Path file = RawWorkbook.write(
                folder.resolve("s.xlsx"),
                "<row>" + texts(HEADINGS) + "</row><row>" + texts("T1", "2024-05-01", "SX-BAA")
                        + "<c><v>9</v></c><c><v>3000</v></c><c><v>1E2</v></c><c><v>1500</v></c></row>",
                "");
        ReadAll read = ReadAll.of(file, MAP);
        assertThat(read.reasons()).isEmpty();
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.Total(3000, 100, 1500));
        assertThat(read.accepted().get(0).origin().row()).isEqualTo(2);
    }

    @Test
    void runsOfATextAreJoinedWithoutPhoneticHints() throws IOException {
        String shared = "<si><r><t>T</t></r><r><rPr/><t>1</t></r><rPh sb='0' eb='1'><t>x</t></rPh></si>"
                + "<si><t xml:space='preserve'> SX-BAA </t></si>";
        Path file = RawWorkbook.write(
                folder.resolve("s.xlsx"),
                "<row r='1'>" + texts(HEADINGS) + "</row><row r='2'><c r='A2' t='s'><v>0</v></c>"
                        + "<c r='B2' t='d'><v>2024-05-01T00:00:00</v></c><c r='C2' t='s'><v>1</v></c>"
                        + "<c r='D2' t='str'><v>9</v></c><c r='E2'><v>3000</v></c><c r='F2'><v>1</v></c>"
                        + "<c r='G2'><v>1500</v></c></row>",
                shared);
        ReadAll read = ReadAll.of(file, MAP);
        assertThat(read.reasons()).isEmpty();
        assertThat(read.flights()).containsExactly("T1");
    }

    @Test
    void aWorkbookOfTheStrictKindIsRead() throws IOException {
        Path file = RawWorkbook.writeStrict(
                folder.resolve("s.xlsx"),
                "<row r='1'>" + texts(HEADINGS) + "</row><row r='2'><c r='A2' t='s'><v>0</v></c>"
                        + "<c r='B2' t='d'><v>2024-05-01</v></c><c r='C2' t='inlineStr'><is><t>SX-BAA</t></is></c>"
                        + "<c r='D2'><v>9</v></c><c r='E2'><v>3000</v></c><c r='F2'><v>1</v></c>"
                        + "<c r='G2'><v>1500</v></c></row>",
                "<si><t>T1</t></si>");
        ReadAll read = ReadAll.of(file, MAP);
        assertThat(read.problems()).isEmpty();
        assertThat(read.reasons()).isEmpty();
        assertThat(read.flights()).containsExactly("T1");
    }

    @Test
    void aDamagedSheetLeavesTheOthersToBeRead() throws IOException {
        Workbook workbook = season(row("T1"));
        fill(workbook.createSheet("June"), 0, HEADINGS);
        fill(workbook.getSheetAt(1), 1, row("T2"));
        workbook.getSheetAt(0).getRow(0).getCell(7).setCellValue("fuel ");
        ReadAll read = ReadAll.of(write(workbook), MAP);
        assertThat(read.flights()).containsExactly("T2");
        assertThat(read.problems()).hasSize(1).allMatch(problem -> problem.contains("the heading is there twice"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "<row r='2'><c r='A2' t='s'><v>7</v></c></row>",
                "<row r='1'><c r='A1'><v>7</v></c></row>",
                "<row r='2'><c r='B2'><v>7</v></c><c r='A2'><v>7</v></c></row>",
                "<row r='2'><c r='XFE2'><v>7</v></c></row>",
                "<row r='1048577'><c><v>7</v></c></row>",
                "<row r='2'><c r='A2'><v>7</v></row>",
                "<row r='2'><c r='A2'><v>&undeclared;</v></c></row>"
            })
    void damagedRowsEndTheReading(String row) throws IOException {
        Path file = RawWorkbook.write(folder.resolve("s.xlsx"), "<row r='1'>" + texts(HEADINGS) + "</row>" + row, "");
        assertThat(ReadAll.of(file, MAP).problems())
                .containsExactly("s.xlsx[Raw]:1: the workbook is damaged or cut short; the rows after this one were not"
                        + " read (expected a workbook that opens without repair)");
    }

    @Test
    void blankRowsCountOnlyWhereFilledOnesFollow() throws IOException {
        Workbook workbook = season(row("T1"));
        Sheet sheet = workbook.getSheetAt(0);
        fill(sheet, 3, "", "  ");
        fill(sheet, 5, row("T2"));
        fill(sheet, 6, "", "");
        sheet.createRow(40).createCell(3).setCellStyle(dateStyle(workbook, "yyyy"));
        ReadAll read = ReadAll.of(write(workbook), MAP);
        assertThat(read.accepted())
                .extracting(loading -> loading.origin().row())
                .containsExactly(2L, 6L);
        assertThat(read.blank()).isEqualTo(3);
        assertThat(read.seen()).isEqualTo(5);
    }

    @Test
    void aRowMayEndEarlyButNotGoBeyondTheHeadings() throws IOException {
        Object[] early = Arrays.copyOf(row("T1"), 7);
        Object[] beyond = Arrays.copyOf(row("T2"), 10);
        beyond[9] = "note";
        ReadAll read = ReadAll.of(write(season(early, beyond)), MAP);
        assertThat(read.flights()).containsExactly("T1");
        assertThat(read.reasons())
                .containsExactly("s.xlsx[Season]:3: the row has 10 cells, more than headings (expected 8 cells)");
    }

    @Test
    void everySheetWithHeadingsIsReadAndTheOthersAreListed() throws IOException {
        Workbook workbook = new XSSFWorkbook();
        workbook.createSheet("Empty");
        fill(workbook.createSheet("Cover"), 0, "Season 2024");
        fill(workbook.createSheet("Old"), 0, HEADINGS);
        Sheet may = workbook.createSheet("May");
        fill(may, 0, "Season", "2024");
        fill(may, 2, HEADINGS);
        fill(may, 3, row("T1"));
        Sheet june = workbook.createSheet("June");
        fill(june, 0, HEADINGS);
        fill(june, 1, row("T2"));
        fill(june, 2, row("T3"));
        fill(workbook.createSheet("July"), 0, HEADINGS);
        workbook.setSheetHidden(2, true);
        ReadAll read = ReadAll.of(write(workbook), MAP);
        assertThat(read.flights()).containsExactly("T1", "T2", "T3");
        assertThat(read.accepted())
                .extracting(loading -> loading.origin().toString())
                .containsExactly("s.xlsx[May]:4", "s.xlsx[June]:2", "s.xlsx[June]:3");
        assertThat(read.skippedSheets())
                .containsExactly(
                        "s.xlsx[Old]: the sheet is hidden",
                        "s.xlsx[Empty]: the sheet is empty",
                        "s.xlsx[Cover]: there is no heading row that a heading map knows");
        assertThat(read.notes())
                .containsExactly(
                        "sheet 'May': 1 row, heading map 'club'",
                        "sheet 'May': 1 filled row above the headings in row 3 was not read",
                        "sheet 'June': 2 rows, heading map 'club'",
                        "sheet 'July': 0 rows, heading map 'club'",
                        "sheet 'July': there are no rows below the headings");
    }

    @Test
    void whereNoSheetFitsTheNearestSaysWhatItLacks() throws IOException {
        Workbook workbook = new XSSFWorkbook();
        fill(workbook.createSheet("Cover"), 0, "Season 2024");
        fill(workbook.createSheet("May"), 1, "Flight", "Date", "Reg");
        assertThat(ReadAll.of(write(workbook), MAP).problems())
                .containsExactly(
                        "s.xlsx[May]:2: required headings are missing: 'Tail' (value 'Flight, Date, Reg';"
                                + " expected every required heading of the heading map 'club'; 'steelyard propose-map' drafts one)");
        assertThat(ReadAll.of(write(new XSSFWorkbook()), MAP).problems())
                .containsExactly("s.xlsx: the file is empty (expected a heading row and rows of loadings below it)");
    }

    @Test
    void aHeadingThereTwiceIsAProblemOfTheFile() throws IOException {
        Workbook workbook = season(row("T1"));
        workbook.getSheetAt(0).getRow(0).getCell(7).setCellValue("fuel ");
        assertThat(ReadAll.of(write(workbook), MAP).problems())
                .containsExactly("s.xlsx[Season]:1: the heading is there twice (value 'fuel';"
                        + " expected each heading once, case and blanks aside)");
    }

    @Test
    void whatIsNoWorkbookIsAProblem() throws Exception {
        Path text = Files.writeString(folder.resolve("t.xlsx"), "Flight;Date;Tail\n");
        assertThat(ReadAll.of(text, MAP).problems())
                .containsExactly("t.xlsx: the file is no workbook (expected a workbook saved as .xlsx)");
        Path empty = Files.createFile(folder.resolve("e.xlsx"));
        assertThat(ReadAll.of(empty, MAP).problems())
                .containsExactly("e.xlsx: the file is empty (expected a workbook saved as .xlsx)");
        Path zip = Files.write(folder.resolve("z.xlsx"), new byte[] {'P', 'K', 3, 4, 9, 9, 9, 9, 9, 9});
        assertThat(ReadAll.of(zip, MAP).problems())
                .containsExactly("z.xlsx: the workbook is damaged or cut short"
                        + " (expected a workbook that opens without repair)");
        assertThat(ReadAll.of(folder.resolve("none.xlsx"), MAP).problems())
                .containsExactly(
                        "none.xlsx: the file cannot be opened (expected a file that is there and may be read)");
    }

    @Test
    void aWorkbookThatIsCutShortIsAProblem() throws IOException {
        Workbook workbook = season();
        for (int i = 1; i < 500; i++) {
            fill(workbook.getSheetAt(0), i, "T" + i);
        }
        byte[] whole = Files.readAllBytes(write(workbook));
        Path cut = Files.write(folder.resolve("c.xlsx"), Arrays.copyOf(whole, whole.length / 2));
        assertThat(ReadAll.of(cut, MAP).problems())
                .containsExactly("c.xlsx: the workbook is damaged or cut short"
                        + " (expected a workbook that opens without repair)");
    }

    @Test
    void anEncryptedOrOlderWorkbookIsAProblem() throws Exception {
        Path plain = write(season(row("T1")));
        Path encrypted = folder.resolve("locked.xlsx");
        try (POIFSFileSystem files = new POIFSFileSystem();
                OPCPackage container = OPCPackage.open(plain.toFile());
                OutputStream out = Files.newOutputStream(encrypted)) {
            Encryptor encryptor = new EncryptionInfo(EncryptionMode.standard).getEncryptor();
            encryptor.confirmPassword("secret");
            try (OutputStream data = encryptor.getDataStream(files)) {
                container.save(data);
            }
            files.writeFilesystem(out);
        }
        assertThat(ReadAll.of(encrypted, MAP).problems())
                .containsExactly("locked.xlsx: the workbook is encrypted"
                        + " (expected a workbook saved as .xlsx without a password)");
        Path older = folder.resolve("older.xlsx");
        try (POIFSFileSystem files = new POIFSFileSystem();
                OutputStream out = Files.newOutputStream(older)) {
            files.createDocument(new java.io.ByteArrayInputStream(new byte[600]), "Workbook");
            files.writeFilesystem(out);
        }
        assertThat(ReadAll.of(older, MAP).problems())
                .containsExactly("older.xlsx: the workbook is of the older binary kind"
                        + " (expected a workbook saved as .xlsx without a password)");
    }

    @Test
    void aWorkbookThatUnpacksToASuspiciousSizeIsAProblem() throws IOException {
        Path file = RawWorkbook.write(
                folder.resolve("s.xlsx"),
                "<row r='1'>" + texts(HEADINGS) + "</row>" + "<row></row>".repeat(3_000_000) + "<row>" + texts("T1")
                        + "</row>",
                "");
        assertThat(ReadAll.of(file, MAP).problems())
                .hasSize(1)
                .allMatch(problem -> problem.contains("the workbook unpacks to a suspicious size"));
    }

    @Test
    void anUnknownColumnOfAWorkbookIsKeptAsText() throws IOException {
        ColumnMap map = Fixtures.keepingUnknown(Fixtures.map(
                "few",
                Fixtures.key("Flight", Field.FLIGHT),
                Fixtures.key("Date", Field.DATE),
                Fixtures.key("Tail", Field.TAIL),
                Fixtures.text("Fuel", Field.IGNORED)));
        assertThat(ReadAll.of(write(season(row("T1"))), map).reasons()).hasSize(3);
    }

    @ParameterizedTest
    @CsvSource({"A1, 0", "Z9, 25", "AA1, 26", "XFD1048576, 16383", "1, -1"})
    void aReferenceNamesItsColumn(String reference, int column) {
        assertThat(XlsxRows.columnOf(reference)).isEqualTo(column);
    }
}
