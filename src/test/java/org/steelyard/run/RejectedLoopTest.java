package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.report.output.RunFacts;
import org.steelyard.run.Season.Fix;

/** Rows that were rejected come back through {@code rejected.csv}, and nothing else changes. */
class RejectedLoopTest {

    private static final int LEDGER_ROWS = 7;

    private static final Fix HOUSE = new Fix("season-1.csv", "3", "tail", "QI-JAA");
    private static final Fix CLUB = new Fix("club-1.csv", "2", "Date", "01.04.2026");
    private static final Fix CLUB_FUEL = new Fix("club-1.csv", "3", "Fuel left US gal", "19,0");
    private static final Fix LEDGER = new Fix("ledger-1.xlsx", "4", "Taxi lb", "400");

    @TempDir
    private Path folder;

    private Season season;

    @BeforeEach
    void aSeasonWithFaultsInTextAndWorkbook() throws Exception {
        season = new Season(folder);
        List<String> house = new ArrayList<>(Season.house(5));
        house.set(2, house.get(2).replaceFirst("QI-J..", "QI-XXX"));
        List<String> club = new ArrayList<>(Season.demo("club-2026.csv", Season.CLUB, 6));
        club.set(1, club.get(1).replace("01.04.2026", "31.04.2026"));
        club.set(2, club.get(2).replace(";19,0;", ";19.0;"));
        season.with("season-1.csv", house).with("club-1.csv", Season.CLUB, club);
        ledger(season.input().resolve("ledger-1.xlsx"));
    }

    /** The first rows of the demo's workbook; the second flight lacks its taxi fuel. */
    private static void ledger(Path file) throws Exception {
        try (InputStream in = Files.newInputStream(Path.of("data-in/demo/ledger-2026-08.xlsx"));
                XSSFWorkbook workbook = new XSSFWorkbook(in);
                OutputStream out = Files.newOutputStream(file)) {
            Sheet sheet = workbook.getSheetAt(0);
            for (int i = sheet.getLastRowNum(); i >= LEDGER_ROWS; i--) {
                if (sheet.getRow(i) != null) {
                    sheet.removeRow(sheet.getRow(i));
                }
            }
            for (int i = 0; i < sheet.getRow(1).getLastCellNum(); i++) {
                if (sheet.getRow(1).getCell(i).getStringCellValue().equals("Taxi lb")) {
                    sheet.getRow(3).removeCell(sheet.getRow(3).getCell(i));
                }
            }
            workbook.write(out);
        }
    }

    @Test
    void theFaultsOfTheSeasonAreRejected() throws Exception {
        RunFacts facts = season.audit();
        assertThat(facts.rejected()).isEqualTo(4);
        assertThat(facts.accepted()).isEqualTo(11);
        assertThat(season.records(season.report("rejected.csv")))
                .extracting(row -> row.get("steelyard_file") + ":" + row.get("steelyard_row"))
                .containsExactly("club-1.csv:2", "club-1.csv:3", "ledger-1.xlsx:4", "season-1.csv:3");
    }

    @Test
    void rowsPutRightAreAcceptedAndNoOtherFlightChangesAByte() throws Exception {
        season.audit();
        List<String> before = season.lines("flights.csv");
        season.putRight("rejected.csv", HOUSE, CLUB, CLUB_FUEL, LEDGER);
        RunFacts facts = season.audit();
        assertThat(facts.rejected()).isZero();
        assertThat(facts.accepted()).isEqualTo(15);
        assertThat(facts.rowsSeen()).isEqualTo(19);
        assertThat(facts.skippedRows().first())
                .extracting(row -> row.message())
                .containsExactly(
                        "club-1.csv:2: the row is read from rejected.csv:2 in its place",
                        "club-1.csv:3: the row is read from rejected.csv:3 in its place",
                        place("ledger-1.xlsx", 4) + ": the row is read from rejected.csv:4 in its place",
                        "season-1.csv:3: the row is read from rejected.csv:5 in its place");
        List<String> after = season.lines("flights.csv");
        assertThat(after).startsWith(before.toArray(String[]::new)).hasSize(15);
        assertThat(after.subList(11, 15)).allMatch(line -> line.startsWith("rejected.csv,"));
    }

    @Test
    void aFlightWhoseNumberWouldRunAsAFormulaBehindAnotherSeparatorComesBackAsItWas() throws Exception {
        String number = "x;=1+1;y|@z";
        List<String> house = new ArrayList<>(Season.house(5));
        house.set(2, house.get(2).replaceFirst("QI-J..", "QI-XXX").replace("J-122", number));
        season.with("season-1.csv", house);
        season.audit();
        assertThat(season.records(season.report("rejected.csv")))
                .extracting(row -> row.get("flight"))
                .contains("x;'=1+1;y|'@z");
        season.putRight("rejected.csv", HOUSE, CLUB, CLUB_FUEL, LEDGER);
        assertThat(season.audit().rejected()).isZero();
        assertThat(season.records(season.report("flights.csv")))
                .extracting(row -> row.get("flight"))
                .contains("x;'=1+1;y|'@z");
        assertThat(Files.readString(season.report("report.html"))).contains(number);
    }

    private String place(String file, int row) throws Exception {
        CSVRecord record = season.records(season.report("skipped.csv")).stream()
                .filter(one -> one.get("file").equals(file))
                .findFirst()
                .orElseThrow();
        return file + "[" + record.get("sheet") + "]:" + row;
    }

    @Test
    void aRowPutRightComesToWhatItWouldHaveComeToAtFirst() throws Exception {
        season.audit();
        season.putRight("rejected.csv", HOUSE, CLUB, CLUB_FUEL, LEDGER);
        season.audit();
        List<String> fixed = figures(season.lines("flights.csv"), "rejected.csv");
        Season sound = new Season(folder.resolve("sound"));
        List<String> club = new ArrayList<>(Season.demo("club-2026.csv", Season.CLUB, 6));
        List<String> house = new ArrayList<>(Season.house(5));
        house.set(2, house.get(2).replaceFirst("QI-J..", "QI-JAA"));
        sound.with("club-1.csv", Season.CLUB, club).with("season-1.csv", house);
        sound.audit();
        List<String> right = figures(sound.lines("flights.csv"), "");
        assertThat(fixed.subList(0, 2)).isEqualTo(right.subList(0, 2));
        assertThat(fixed.get(3)).isEqualTo(right.get(6));
    }

    /** Lines of a file without where they stood. */
    private static List<String> figures(List<String> lines, String file) {
        return lines.stream()
                .filter(line -> line.startsWith(file))
                .map(line -> line.replaceFirst("^[^,]*,[0-9]+,", ""))
                .toList();
    }

    @Test
    void ofAHalfFixedFileTheRestIsRejectedAgainInItsSecondRound() throws Exception {
        season.audit();
        season.putRight("rejected.csv", HOUSE, LEDGER);
        RunFacts facts = season.audit();
        assertThat(facts.accepted()).isEqualTo(13);
        assertThat(facts.rejected()).isEqualTo(2);
        assertThat(facts.skippedRowCount()).isEqualTo(4);
        List<CSVRecord> rejected = season.records(season.report("rejected.csv"));
        assertThat(rejected)
                .extracting(row -> row.get("steelyard_file") + ":" + row.get("steelyard_row") + " "
                        + row.get("steelyard_map") + " " + row.get("steelyard_round"))
                .containsExactly("club-1.csv:2 club 2", "club-1.csv:3 club 2");
        assertThat(Files.readString(season.report("report.html")))
                .contains("rejected.csv:2 (for club-1.csv:2)")
                .contains("Date: not a date (value &#39;31.04.2026&#39;; expected a date as dd.MM.uuuu)");
        season.putRight("rejected-2.csv", CLUB, CLUB_FUEL);
        RunFacts third = season.audit();
        assertThat(third.accepted()).isEqualTo(15);
        assertThat(third.rejected()).isZero();
        assertThat(third.rowsSeen()).isEqualTo(21);
        assertThat(third.skippedRows().first())
                .extracting(row -> row.message())
                .contains(
                        "club-1.csv:2: the row is read from rejected-2.csv:2 in its place",
                        "rejected.csv:2: the row is read from rejected-2.csv:2 in its place, where it is put right"
                                + " again");
    }

    @Test
    void anUntouchedFileOfRejectedRowsChangesNothingButThePlace() throws Exception {
        RunFacts before = season.audit();
        List<String> flights = season.lines("flights.csv");
        season.putRight("rejected.csv");
        RunFacts after = season.audit();
        assertThat(after.accepted()).isEqualTo(before.accepted());
        assertThat(after.rejected()).isEqualTo(before.rejected());
        assertThat(season.lines("flights.csv")).isEqualTo(flights);
    }

    @Test
    void aRowThatWasPutRightInItsOwnFileTooIsReadThereAndFoundTwice() throws Exception {
        season.audit();
        season.putRight("rejected.csv", HOUSE, CLUB, CLUB_FUEL, LEDGER);
        List<String> house = new ArrayList<>(Season.house(5));
        house.set(2, house.get(2).replaceFirst("QI-J..", "QI-JAA"));
        season.with("season-1.csv", house);
        RunFacts facts = season.audit();
        assertThat(facts.accepted()).isEqualTo(15);
        assertThat(facts.rejected()).isZero();
        assertThat(facts.skippedRows().first())
                .extracting(row -> row.message())
                .contains("rejected.csv:5 (for season-1.csv:3): the flight stands in season-1.csv:3 cell for cell");
    }

    @Test
    void cellsUnderTheHeadingsOfOtherFilesAndCellsWithoutHeadingAreFaults() throws Exception {
        season.audit();
        season.putRight(
                "rejected.csv",
                HOUSE,
                new Fix("season-1.csv", "3", "Flight", "'=J-1"),
                new Fix("season-1.csv", "3", "steelyard_extra_cells", "7; 8"),
                new Fix("club-1.csv", "2", "steelyard_map", "clup"),
                new Fix("club-1.csv", "3", "steelyard_row", ""));
        season.audit();
        String page = Files.readString(season.report("report.html"));
        assertThat(page)
                .contains("Flight: season-1.csv has no column of this heading (value &#39;=J-1&#39;; expected a blank"
                        + " cell)")
                .contains("steelyard_extra_cells: cells that stood under no heading of season-1.csv are still there"
                        + " (value &#39;7; 8&#39;; expected a blank cell, once what they say stands under its heading or"
                        + " is not wanted)")
                .contains("steelyard_map: there is no such heading map (value &#39;clup&#39;; expected one of club,"
                        + " house, items, ledger)")
                .contains("steelyard_row: the row does not say where it stood");
    }

    @Test
    void aFileOfRejectedRowsAloneIsReadByWhatItHolds() throws Exception {
        season.audit();
        season.putRight("rejected.csv", HOUSE, CLUB, CLUB_FUEL, LEDGER);
        Season alone = new Season(folder.resolve("alone"));
        Files.createDirectories(alone.input());
        Files.copy(season.input().resolve("rejected.csv"), alone.input().resolve("fixed.csv"));
        RunFacts facts = alone.audit();
        assertThat(facts.accepted()).isEqualTo(4);
        assertThat(facts.inputs().get(0).mapName()).isEqualTo("of each row");
    }

    @Test
    void aFileOfRejectedRowsComesBackAsAWorkbookToo() throws Exception {
        season.audit();
        season.putRight("rejected.csv", HOUSE, CLUB, CLUB_FUEL, LEDGER);
        Path csv = season.input().resolve("rejected.csv");
        List<CSVRecord> records = season.records(csv);
        try (XSSFWorkbook workbook = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(season.input().resolve("fixed.xlsx"))) {
            Sheet sheet = workbook.createSheet("rejected");
            fill(sheet, records.get(0).getParser().getHeaderNames());
            records.forEach(row -> fill(sheet, row.toList()));
            workbook.write(out);
        }
        Files.delete(csv);
        RunFacts facts = season.audit();
        assertThat(facts.accepted()).isEqualTo(15);
        assertThat(facts.rejected()).isZero();
        assertThat(facts.skippedRowCount()).isEqualTo(4);
    }

    private static void fill(Sheet sheet, List<String> cells) {
        var row = sheet.createRow(sheet.getPhysicalNumberOfRows());
        for (int i = 0; i < cells.size(); i++) {
            row.createCell(i).setCellValue(cells.get(i));
        }
    }
}
