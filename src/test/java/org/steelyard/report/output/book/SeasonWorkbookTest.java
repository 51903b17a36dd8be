package org.steelyard.report.output.book;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.steelyard.report.output.book.WorkbookReadBack.FIRST_ROW;
import static org.steelyard.report.output.book.WorkbookReadBack.HEADING_ROW;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellType;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.output.RunFacts;
import org.steelyard.report.output.WorkbookFixture;
import org.steelyard.report.text.Caution;
import org.steelyard.report.words.WorkbookNews;
import org.steelyard.samples.Plain;

class SeasonWorkbookTest {

    private static final List<AuditedFlight> FLIGHTS = WorkbookFixture.flights(150, 7);
    private static final List<RejectedRow> REJECTED = WorkbookFixture.rejected(14);
    private static final List<String> SHEETS = List.of(
            "Overview",
            "Charts",
            "Findings",
            "Flights",
            "Trim spread",
            "Trim and CG statistics",
            "What drives the spread",
            "Unusual flights",
            "Drift by week",
            "Notes",
            "Rejected rows",
            "Chart data",
            "Run facts");

    /** Read only, for all tests that look at an ordinary season. */
    private static WorkbookReadBack season;

    @TempDir
    Path folder;

    @BeforeAll
    static void writeOrdinarySeason(@TempDir Path shared) throws IOException {
        Path file = shared.resolve("season.xlsx");
        write(file, FLIGHTS, REJECTED, WorkbookLimits.FORMAT);
        season = new WorkbookReadBack(file);
    }

    @AfterAll
    static void closeOrdinarySeason() throws IOException {
        season.close();
    }

    @Test
    void sheetsStandInReadingOrderWithTheOverviewInFront() {
        assertThat(season.names()).isEqualTo(SHEETS);
        assertThat(season.book.getActiveSheetIndex()).isZero();
        assertThat(season.sheets().filter(XSSFSheet::isSelected)).hasSize(1);
    }

    @Test
    void flightsHaveTheirStatesAtFullPrecision() {
        for (int i = 0; i < FLIGHTS.size(); i++) {
            AuditedFlight flight = FLIGHTS.get(i);
            int row = FIRST_ROW + i;
            assertState(season, row, "Take-off", flight, flight.balance().takeoff());
            assertState(
                    season,
                    row,
                    "Zero-fuel",
                    flight,
                    flight.balance().zeroFuel().orElseThrow());
            assertState(
                    season, row, "Landing", flight, flight.balance().landing().orElseThrow());
            assertState(season, row, "Ramp", flight, flight.balance().ramp().orElseThrow());
            assertState(
                    season,
                    row,
                    "Dry operating",
                    flight,
                    flight.balance().dryOperating().orElseThrow());
        }
        assertThat(season.sheet("Flights").getLastRowNum()).isEqualTo(FIRST_ROW + FLIGHTS.size() - 1);
    }

    private static void assertState(
            WorkbookReadBack read, int row, String state, AuditedFlight flight, MassMoment expected) {
        double cg = flight.loading().type().geometry().chord().percentAt(expected.armM());
        assertThat(read.number("Flights", row, state + " mass, kg")).isEqualTo(expected.massKg());
        assertThat(read.number("Flights", row, state + " CG, % MAC")).isEqualTo(cg);
    }

    @Test
    void flightsHaveTheirIdentityStatusAndTrim() {
        for (int i = 0; i < FLIGHTS.size(); i++) {
            AuditedFlight flight = FLIGHTS.get(i);
            int row = FIRST_ROW + i;
            FlightIdent ident = flight.loading().flight();
            assertThat(season.text("Flights", row, "Flight")).isEqualTo(ident.flight());
            assertThat(season.cell("Flights", row, "Date")
                            .getLocalDateTimeCellValue()
                            .toLocalDate())
                    .isEqualTo(ident.date());
            assertThat(season.text("Flights", row, "Status"))
                    .endsWith(flight.assessment().status().label());
            assertThat((long) season.number("Flights", row, "Row"))
                    .isEqualTo(flight.loading().origin().row());
            assertTrim(season, row, flight);
        }
    }

    private static void assertTrim(WorkbookReadBack read, int row, AuditedFlight flight) {
        var trim = flight.balance().takeoffTrim();
        if (trim.isEmpty()) {
            assertThat(read.cell("Flights", row, "Take-off trim, units").getCellType())
                    .isEqualTo(CellType.BLANK);
            return;
        }
        assertThat(read.number("Flights", row, "Take-off trim, units"))
                .isEqualTo(trim.get().trimUnits().getAsDouble());
        assertThat(read.text("Flights", row, "Take-off trim setting"))
                .isEqualTo(spoken(trim.get().settingUnits().getAsDouble()));
    }

    /** Tenths of a unit, nose-up positive, as a pilot says them. */
    private static String spoken(double units) {
        long tenths = Math.round(Math.abs(units) * 10);
        String side = units > 0 ? " UP" : " DN";
        return tenths / 10 + "." + tenths % 10 + (tenths == 0 ? "" : side);
    }

    @Test
    void aTrimSettingReadsAsPilotsSayIt() throws Exception {
        AuditedFlight flight = flight("ZZ1", "15", 20, List.of());
        try (WorkbookReadBack read = written(List.of(flight), List.of())) {
            // 3.2 at 5 % MAC and -2.4 at 40 % MAC: 0.16 units a % MAC, so 0.8 at 20 % MAC
            assertThat(read.text("Flights", FIRST_ROW, "Take-off trim setting")).isEqualTo("0.8 UP");
            assertThat(read.cell("Flights", FIRST_ROW, "Take-off trim, units")
                            .getCellStyle()
                            .getDataFormatString())
                    .isEqualTo("0.00\" UP\";0.00\" DN\";0.00");
        }
    }

    @Test
    void eachStatusHasItsWordItsSignAndItsFill() {
        Set<String> words = new HashSet<>();
        Set<String> looks = new HashSet<>();
        for (int row = FIRST_ROW; row < FIRST_ROW + FLIGHTS.size(); row++) {
            Cell cell = season.cell("Flights", row, "Status");
            words.add(cell.getStringCellValue());
            looks.add(cell.getStringCellValue().charAt(0) + " "
                    + ((org.apache.poi.xssf.usermodel.XSSFColor)
                                    cell.getCellStyle().getFillForegroundColorColor())
                            .getARGBHex());
        }
        assertThat(words).containsExactlyInAnyOrder("● clean", "◇ marginal", "✕ breached");
        assertThat(looks).containsExactlyInAnyOrder("● FFE6F2EE", "◇ FFFFDF94", "✕ FF7A2442");
    }

    @Test
    void theCellThatAFindingIsAboutIsMarked() throws Exception {
        AuditedFlight aft = flight("ZZ1", "15", 35.2, List.of());
        try (WorkbookReadBack read = written(List.of(aft), List.of())) {
            Cell breached = read.cell("Flights", FIRST_ROW, "Take-off CG, % MAC");
            Cell untouched = read.cell("Flights", FIRST_ROW, "Landing CG, % MAC");
            assertThat(breached.getCellStyle().getFillForegroundColorColor()).isNotNull();
            assertThat(untouched.getCellStyle().getFillForegroundColorColor()).isNull();
            assertThat(read.number("Flights", FIRST_ROW, "Least room aft, % MAC"))
                    .isNegative();
            assertThat(read.text("Flights", FIRST_ROW, "Least aft at")).isEqualTo("zero fuel");
        }
    }

    @Test
    void findingsAreInTheUnitsOfTheUsersAndNotesApart() {
        int finding = FIRST_ROW;
        int note = FIRST_ROW;
        for (AuditedFlight flight : FLIGHTS) {
            for (Finding found : flight.assessment().findings()) {
                boolean isNote = found.severity() == Severity.NOTE;
                assertFinding(season, isNote ? "Notes" : "Findings", isNote ? note++ : finding++, flight, found);
            }
        }
        assertThat(season.sheet("Findings").getLastRowNum()).isEqualTo(finding - 1);
        assertThat(season.sheet("Notes").getLastRowNum()).isEqualTo(note - 1);
        assertThat(finding).isGreaterThan(FIRST_ROW + 2);
    }

    private static void assertFinding(
            WorkbookReadBack read, String sheet, int row, AuditedFlight flight, Finding finding) {
        var type = flight.loading().type();
        assertThat(read.text(sheet, row, "Flight"))
                .isEqualTo(flight.loading().flight().flight());
        assertThat(read.text(sheet, row, "Severity"))
                .endsWith(finding.severity().label());
        assertThat(read.text(sheet, row, "Kind")).isEqualTo(finding.code().code());
        assertThat(read.text(sheet, row, "State")).isEqualTo(finding.phase().label());
        String sentence = read.text(sheet, row, "What was found");
        assertThat(sentence).matches("[A-Z0-9].*[^.]\\.");
        if (finding.severity() == Severity.NOTE) {
            assertThat(read.cell(sheet, row, "Value").getCellType()).isEqualTo(CellType.BLANK);
            return;
        }
        assertThat(type.geometry().units())
                .as("so that figures stand as they are")
                .isEqualTo(DisplayUnits.METRIC);
        assertThat(read.number(sheet, row, "Value")).isEqualTo(finding.value());
        assertThat(read.number(sheet, row, "Limit")).isEqualTo(finding.limit());
        assertThat(read.number(sheet, row, "Margin")).isEqualTo(finding.margin());
        String unit = UNITS.get(finding.quantity());
        assertThat(read.text(sheet, row, "Unit")).isEqualTo(unit);
        // what is beyond is told rounded up, what is left rounded down
        RoundingMode mode = finding.margin() < 0 ? RoundingMode.UP : RoundingMode.DOWN;
        String gap = BigDecimal.valueOf(Math.abs(finding.margin()))
                .setScale(9, RoundingMode.HALF_EVEN)
                .setScale(unit.equals("kg") ? 0 : 2, mode)
                .toPlainString();
        assertThat(sentence).contains(gap + " " + unit);
    }

    private static final Map<Quantity, String> UNITS =
            Map.of(Quantity.MASS, "kg", Quantity.CG, "% MAC", Quantity.TRIM, "units", Quantity.PERSONS, "passengers");

    @Test
    void aFindingOfATypeInPoundsIsInPounds() throws Exception {
        Tail tail = Plain.tail("ZZ-WA", WorkbookFixture.LIGHT, MassMoment.at(600, 16));
        AuditedFlight heavy =
                WorkbookFixture.flight(new Origin("a.csv", "", 2), ident("ZZ1"), tail, "", 1_200, 22, List.of());
        try (WorkbookReadBack read = written(List.of(heavy), List.of())) {
            // 1 lb = 0.45359237 kg (NIST SP 811, appendix B)
            assertThat(read.number("Findings", FIRST_ROW, "Value")).isEqualTo(1_200 / 0.45359237);
            assertThat(read.text("Findings", FIRST_ROW, "Unit")).isEqualTo("lb");
            assertThat(read.number("Flights", FIRST_ROW, "Take-off mass, kg")).isEqualTo(1_200);
        }
    }

    @Test
    void theOverviewTellsTheFiguresTheNewsAndTheCaution() {
        SeasonSummary summary = WorkbookFixture.summary(FLIGHTS);
        Row figures = season.rowWith("Overview", 1, "Flights", 1).getSheet().getRow(4);
        assertThat(Stream.of(1, 4, 7, 10, 13)
                        .map(column -> figures.getCell(column).getNumericCellValue()))
                .containsExactly(
                        150.0,
                        (double) summary.all().clean(),
                        (double) summary.all().marginal(),
                        (double) summary.all().breached(),
                        14.0);
        assertThat(season.texts("Overview")).contains("Season Spring 2026", Caution.TEXT, WorkbookNews.of(summary, 14));
        assertThat(season.sheet("Overview").getPrintSetup().getFitHeight()).isEqualTo((short) 1);
        assertTypicalTrim(season, summary.trim().get(0));
    }

    private static void assertTypicalTrim(WorkbookReadBack read, TrimGroup group) {
        Row row = read.rowWith("Overview", 1, group.typeId(), 1);
        Spread trim = group.trimUnits().orElseThrow();
        assertThat((long) row.getCell(3).getNumericCellValue()).isEqualTo(trim.n());
        double[] expected = {trim.p5(), trim.median(), trim.p95()};
        for (int i = 0; i < expected.length; i++) {
            assertThat(row.getCell(4 + i).getNumericCellValue()).isEqualTo(expected[i]);
            assertThat(new DataFormatter(Locale.ROOT).formatCellValue(row.getCell(4 + i)))
                    .isEqualTo(FindingText.trim(expected[i], 0.01, group.unit()));
        }
    }

    @Test
    void theTrimSpreadHasEveryStatisticOfEveryGroup() {
        List<TrimGroup> groups = WorkbookFixture.summary(FLIGHTS).trim();
        int first = season.rowWith("Trim spread", 0, groups.get(0).typeId(), 1).getRowNum();
        for (int i = 0; i < groups.size(); i++) {
            if (groups.get(i).trimUnits().isPresent()) {
                assertSpread(
                        season.sheet("Trim spread").getRow(first + i),
                        groups.get(i).trimUnits().get());
            }
        }
        assertThat(groups).hasSizeGreaterThan(4);
        assertThat(season.texts("Trim spread")).anyMatch(text -> text.contains("inclusive method"));
    }

    private static void assertSpread(Row row, Spread s) {
        double[] expected = {
            (double) s.n(),
            s.mean(),
            s.sd().orElseThrow(),
            s.min(),
            s.p5(),
            s.p25(),
            s.median(),
            s.p75(),
            s.p95(),
            s.max()
        };
        for (int i = 0; i < expected.length; i++) {
            assertThat(row.getCell(2 + i).getNumericCellValue()).isEqualTo(expected[i]);
        }
    }

    @Test
    void aSmallGroupIsMarkedAndItsStandardDeviationOfOneFlightIsBlank() throws Exception {
        try (WorkbookReadBack read = written(List.of(flight("ZZ1", "15", 20, List.of())), List.of())) {
            Row row = read.rowWith("Trim spread", 0, "MERLE-180", 1);
            assertThat(row.getCell(2).getNumericCellValue()).isEqualTo(1);
            assertThat(row.getCell(4)).isNull();
            assertThat(row.getCell(14).getStringCellValue()).isEqualTo("few flights");
        }
    }

    @Test
    void rejectedRowsKeepTheirCellsAsTextUnderTheirHeadings() {
        Row headings = season.sheet("Rejected rows").getRow(FIRST_ROW);
        Row row = season.sheet("Rejected rows").getRow(FIRST_ROW + 1);
        assertThat(headings.getCell(8).getStringCellValue()).isEqualTo("ZFW lb");
        assertThat(row.getCell(0).getStringCellValue()).isEqualTo("island.xlsx");
        assertThat(row.getCell(2).getNumericCellValue()).isEqualTo(11);
        assertThat(row.getCell(4).getStringCellValue()).isEqualTo("ZFW lb: no value (expected a mass in lb)");
        assertThat(row.getCell(5).getStringCellValue()).isEqualTo("=1+1");
        Row spring = season.rowWith("Rejected rows", 0, "spring.csv", 2);
        assertThat(spring.getCell(4).getStringCellValue().lines()).hasSize(3);
        assertThat(spring.getCell(9).getStringCellValue()).isEqualTo("12,5");
    }

    @Test
    void runFactsNameInputsChecksumsOptionsAndTheCaution() {
        assertThat(season.texts("Run facts"))
                .contains(
                        Caution.TEXT,
                        "ab".repeat(32),
                        "ef".repeat(32),
                        "config=config",
                        "Steelyard 0.1.0",
                        "neither CSV nor XLSX",
                        "column 'remarks' left out",
                        "14 rows below the headings on 1 sheet");
        Row input = season.rowWith("Run facts", 0, "spring.csv", 1);
        assertThat(Stream.of(2, 3, 4, 5).map(column -> input.getCell(column).getNumericCellValue()))
                .containsExactly(166.0, 150.0, 14.0, 2.0);
    }

    @Test
    void noCellIsAFormulaAndWhatLooksLikeOneIsQuoted() throws Exception {
        List<Extra> extras = List.of(new Extra("=cmd", "@SUM(A1)"));
        AuditedFlight flight = flight("=HYPERLINK(\"x\")", "15", 20, extras);
        try (WorkbookReadBack read = written(List.of(flight), REJECTED)) {
            assertThat(read.cells().filter(cell -> cell.getCellType() == CellType.FORMULA))
                    .isEmpty();
            assertThat(read.text("Flights", FIRST_ROW, "Flight")).isEqualTo("=HYPERLINK(\"x\")");
            assertThat(read.cell("Flights", FIRST_ROW, "Flight").getCellStyle().getQuotePrefixed())
                    .isTrue();
            assertThat(read.text("Flights", FIRST_ROW, "Other columns")).isEqualTo("=cmd: @SUM(A1)");
            assertThat(read.cell("Flights", FIRST_ROW, "Tail").getCellStyle().getQuotePrefixed())
                    .isFalse();
        }
    }

    @Test
    void listsHaveFiltersFrozenHeadingsAndHeadingsOnEveryPage() {
        for (String name : List.of("Findings", "Flights", "Notes", "Rejected rows")) {
            XSSFSheet sheet = season.sheet(name);
            CellRangeAddress filter = CellRangeAddress.valueOf(
                    sheet.getCTWorksheet().getAutoFilter().getRef());
            assertThat(filter.getFirstRow()).isEqualTo(HEADING_ROW);
            assertThat(filter.getLastRow()).isEqualTo(sheet.getLastRowNum());
            assertThat(sheet.getPaneInformation().isFreezePane()).isTrue();
            assertThat(sheet.getPaneInformation().getHorizontalSplitPosition()).isEqualTo((short) FIRST_ROW);
            assertThat(sheet.getRepeatingRows()).isEqualTo(new CellRangeAddress(HEADING_ROW, HEADING_ROW, -1, -1));
        }
    }

    @Test
    void everySheetPrintsInLandscapeWithPageNumberAndCaution() {
        assertThat(season.sheets()).allSatisfy(sheet -> {
            assertThat(sheet.getPrintSetup().getLandscape()).isTrue();
            assertThat(sheet.getFitToPage()).isTrue();
            assertThat(sheet.getFooter().getRight()).contains("&P");
            assertThat(sheet.getFooter().getLeft().replace('\n', ' ')).endsWith(Caution.TEXT);
        });
    }

    /**
     * 1980-01-01 00:00, where the calendar of the archive begins: date in the upper half, day 1 of month 1 of year 0.
     */
    private static final int FIRST_DAY = 1 << 21 | 1 << 16;

    @Test
    void twoRunsAreByteIdenticalAndNoEntryCarriesTheTimeOfTheClock() throws Exception {
        Path first = folder.resolve("first.xlsx");
        Path second = folder.resolve("second.xlsx");
        write(first, FLIGHTS, REJECTED, WorkbookLimits.FORMAT);
        write(second, FLIGHTS, REJECTED, WorkbookLimits.FORMAT);
        assertThat(second).hasSameBinaryContentAs(first);
        assertThat(entryTimes(Files.readAllBytes(first))).hasSizeGreaterThan(10).containsOnly(FIRST_DAY);
    }

    /** Times of the entries from the central directory (APPNOTE 4.3.12 and 4.3.16, last mod file time and date). */
    private static List<Integer> entryTimes(byte[] zip) {
        ByteBuffer bytes = ByteBuffer.wrap(zip).order(ByteOrder.LITTLE_ENDIAN);
        int end = zip.length - 22;
        assertThat(bytes.getInt(end)).isEqualTo(0x06054b50);
        List<Integer> times = new ArrayList<>();
        int at = bytes.getInt(end + 16);
        while (bytes.getInt(at) == 0x02014b50) {
            times.add(bytes.getInt(at + 12));
            at += 46 + bytes.getShort(at + 28) + bytes.getShort(at + 30) + bytes.getShort(at + 32);
        }
        return times;
    }

    @Test
    void sheetsContinueOnTheNextPastTheRowLimit() throws Exception {
        Path file = folder.resolve("small.xlsx");
        write(file, FLIGHTS, REJECTED, new WorkbookLimits(52, 16_384, 32_767));
        try (WorkbookReadBack read = new WorkbookReadBack(file)) {
            assertThat(read.names())
                    .containsSubsequence("Overview", "Findings", "Flights", "Flights 2", "Flights 3", "Trim spread");
            assertThat(read.names()).doesNotContain("Flights 4");
            assertThat(read.text("Flights", FIRST_ROW + 49, "Flight")).isEqualTo("ZZ149");
            assertThat(read.text("Flights 2", FIRST_ROW, "Flight")).isEqualTo("ZZ150");
            assertThat(read.text("Flights 3", FIRST_ROW + 49, "Flight")).isEqualTo("ZZ249");
            assertThat(read.sheet("Flights 2").getCTWorksheet().getAutoFilter().getRef())
                    .endsWith("52");
            assertThat(read.texts("Run facts"))
                    .contains("150 rows below the headings on 3 sheets: Flights, Flights 2, Flights 3");
        }
    }

    @Test
    void rejectedRowsOfAContinuedSheetHaveTheirHeadingsAgain() throws Exception {
        Path file = folder.resolve("small.xlsx");
        write(file, FLIGHTS, REJECTED, new WorkbookLimits(7, 16_384, 32_767));
        try (WorkbookReadBack read = new WorkbookReadBack(file)) {
            List<String> parts = read.names().stream()
                    .filter(name -> name.startsWith("Rejected"))
                    .toList();
            assertThat(parts).hasSizeGreaterThan(2);
            assertThat(parts)
                    .allSatisfy(part -> assertThat(read.text(part, FIRST_ROW, "Reasons"))
                            .isEqualTo("Headings of the original cells"));
            long rows = parts.stream()
                    .flatMap(part -> read.texts(part).stream())
                    .filter(text -> text.contains("(value '32.13.2026'") || text.startsWith("ZFW lb: no"))
                    .count();
            assertThat(rows).isEqualTo(14);
        }
    }

    @Test
    void aSeasonWithoutFlightsMakesAWholeWorkbook() throws Exception {
        try (WorkbookReadBack read = written(List.of(), List.of())) {
            assertThat(read.names()).isEqualTo(SHEETS);
            assertThat(read.texts("Overview")).contains("No flight was accepted.");
            assertThat(read.sheet("Flights").getRow(FIRST_ROW).getCell(0).getStringCellValue())
                    .isEqualTo(SheetFlights.NONE);
            assertThat(read.sheet("Rejected rows").getRow(FIRST_ROW).getCell(0).getStringCellValue())
                    .isEqualTo(SheetRejected.NONE);
        }
    }

    @Test
    void oddTextComesBackWhole() throws Exception {
        List<String> odd = List.of(
                "quotes \" and ' and <tag> & more",
                "two\nlines",
                "مرحبا שלום",
                "e\u0301 combining and 😀",
                "  blanks around  ",
                "_x0041_ is no A",
                "007");
        try (WorkbookReadBack read = written(List.of(), List.of(rejected(odd)))) {
            Row row = read.sheet("Rejected rows").getRow(FIRST_ROW);
            for (int i = 0; i < odd.size(); i++) {
                assertThat(row.getCell(5 + i).getStringCellValue()).isEqualTo(odd.get(i));
            }
        }
    }

    @Test
    void controlCharactersAreShownByTheirPictures() throws Exception {
        List<String> cells = List.of("a\u0000b\u0007c", "half \uD83D surrogate", "x\uFFFFy", "old\rMac");
        try (WorkbookReadBack read = written(List.of(), List.of(rejected(cells)))) {
            Row row = read.sheet("Rejected rows").getRow(FIRST_ROW);
            assertThat(row.getCell(5).getStringCellValue()).isEqualTo("a␀b␇c");
            assertThat(row.getCell(6).getStringCellValue()).isEqualTo("half \uFFFD surrogate");
            assertThat(row.getCell(7).getStringCellValue()).isEqualTo("x\uFFFDy");
            assertThat(row.getCell(8).getStringCellValue()).isEqualTo("old\nMac");
        }
    }

    @Test
    void aTextTooLongForACellIsCutWithAMarkAndCounted() throws Exception {
        String whole = "x".repeat(40_000);
        try (WorkbookReadBack read = written(List.of(), List.of(rejected(List.of(whole, "short"))))) {
            String cut =
                    read.sheet("Rejected rows").getRow(FIRST_ROW).getCell(5).getStringCellValue();
            assertThat(cut).hasSize(32_767).endsWith("[cut here: 40,000 characters in all; the CSV file has them]");
            assertThat(read.texts("Run facts")).anyMatch(text -> text.startsWith("1 cell held more"));
        }
    }

    @Test
    void aRowWithMoreCellsThanColumnsSaysHowManyAreMissing() throws Exception {
        List<String> wide = Collections.nCopies(20_000, "v");
        try (WorkbookReadBack read = written(List.of(), List.of(rejected(wide)))) {
            Row row = read.sheet("Rejected rows").getRow(FIRST_ROW);
            assertThat(row.getLastCellNum()).isEqualTo((short) 16_384);
            assertThat(row.getCell(16_383).getStringCellValue())
                    .isEqualTo("… [3,622 more cells; rejected.csv has them]");
        }
    }

    @Test
    void aDateBeforeTheFormatsCalendarStaysReadable() throws Exception {
        FlightIdent early = new FlightIdent("ZZ1", LocalDate.of(1899, 12, 31), "ZZAA", "ZZBB");
        Tail tail = Plain.tail("ZZ-MA", WorkbookFixture.JET, MassMoment.at(25_000, 16));
        AuditedFlight flight =
                WorkbookFixture.flight(new Origin("a.csv", "", 2), early, tail, "15", 50_000, 20, List.of());
        try (WorkbookReadBack read = written(List.of(flight), List.of())) {
            assertThat(read.text("Flights", FIRST_ROW, "Date")).isEqualTo("1899-12-31");
        }
    }

    @Test
    void aSeasonNameWithTheFormatsCodesIsPrintedAsItStands() throws Exception {
        Path file = folder.resolve("named.xlsx");
        RunFacts facts = Plain.runFacts("2026 R&D", "0.1.0", List.of(), List.of(), List.of(), List.of());
        try (SeasonWorkbook book = SeasonWorkbook.open(file, WorkbookFixture.POLICY)) {
            book.finish(WorkbookFixture.summary(List.of()), facts);
        }
        try (WorkbookReadBack read = new WorkbookReadBack(file)) {
            assertThat(read.sheet("Overview").getHeader().getLeft()).endsWith("\"2026 R&&D");
        }
    }

    @Test
    void closingWithoutFinishLeavesNothing() throws Exception {
        Path file = folder.resolve("never.xlsx");
        try (SeasonWorkbook book = SeasonWorkbook.open(file, WorkbookFixture.POLICY)) {
            for (AuditedFlight flight : FLIGHTS) {
                book.flight(flight);
            }
        }
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void finishReplacesAnOlderFileAndLeavesNoOther() throws Exception {
        Path file = folder.resolve("season.xlsx");
        Files.writeString(file, "older");
        write(file, FLIGHTS, REJECTED, WorkbookLimits.FORMAT);
        try (WorkbookReadBack read = new WorkbookReadBack(file);
                Stream<Path> files = Files.list(folder)) {
            assertThat(read.names()).isEqualTo(SHEETS);
            assertThat(files).containsExactly(file);
        }
    }

    @Test
    void aSummaryOfOtherFlightsIsRefused() throws IOException {
        try (SeasonWorkbook book = SeasonWorkbook.open(folder.resolve("season.xlsx"), WorkbookFixture.POLICY)) {
            book.flight(FLIGHTS.get(0));
            SeasonSummary other = WorkbookFixture.summary(FLIGHTS);
            RunFacts facts = WorkbookFixture.facts(1, 0);
            assertThatThrownBy(() -> book.finish(other, facts))
                    .isInstanceOf(IllegalStateException.class)
                    .hasMessage("the summary is of 150 flights, but 1 were written");
        }
    }

    private WorkbookReadBack written(List<AuditedFlight> flights, List<RejectedRow> rejected) throws IOException {
        Path file = folder.resolve("season.xlsx");
        write(file, flights, rejected, WorkbookLimits.FORMAT);
        return new WorkbookReadBack(file);
    }

    private static void write(Path file, List<AuditedFlight> flights, List<RejectedRow> rejected, WorkbookLimits limits)
            throws IOException {
        try (SeasonWorkbook book = SeasonWorkbook.open(file, WorkbookFixture.POLICY, limits)) {
            for (AuditedFlight flight : flights) {
                book.flight(flight);
            }
            for (RejectedRow row : rejected) {
                book.rejected(row);
            }
            book.finish(WorkbookFixture.summary(flights), WorkbookFixture.facts(flights.size(), rejected.size()));
        }
    }

    private static FlightIdent ident(String flight) {
        return new FlightIdent(flight, LocalDate.of(2026, 3, 1), "ZZAA", "ZZBB");
    }

    private static AuditedFlight flight(String name, String flaps, double cgPercentMac, List<Extra> extras) {
        Tail tail = Plain.tail("ZZ-MA", WorkbookFixture.JET, MassMoment.at(25_000, 16));
        return WorkbookFixture.flight(
                new Origin("a.csv", "", 2), ident(name), tail, flaps, 50_000, cgPercentMac, extras);
    }

    private static RejectedRow rejected(List<String> cells) {
        Origin origin = new Origin("a.csv", "", 2);
        return new RejectedRow(
                origin,
                "plain",
                List.of(),
                cells,
                List.of(new InputProblem(origin, "", ProblemCode.MALFORMED_ROW, "odd", "", "")));
    }

    /** Rows wait beside the workbook; a link to a device without room stands in for a full disk. */
    @Test
    @EnabledOnOs(OS.LINUX)
    void aFullDiskUnderWaitingRowsIsAFaultOfTheDisk(@TempDir Path full) throws IOException {
        List<Path> links = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            links.add(Files.createSymbolicLink(full.resolve(".season.xlsx.rows" + i), Path.of("/dev/full")));
        }
        SeasonWorkbook book = SeasonWorkbook.open(full.resolve("season.xlsx"), WorkbookFixture.POLICY);
        RejectedRow row = REJECTED.get(0);
        assertThatIOException()
                .isThrownBy(() -> {
                    for (int i = 0; i < 200_000; i++) {
                        book.rejected(row);
                    }
                })
                .withMessage("No space left on device");
        assertThatIOException()
                .isThrownBy(() -> SeasonWorkbook.open(full.resolve("none").resolve("a.xlsx"), WorkbookFixture.POLICY))
                .isInstanceOf(java.nio.file.NoSuchFileException.class);
        for (Path link : links) {
            Files.delete(link);
        }
    }
}
