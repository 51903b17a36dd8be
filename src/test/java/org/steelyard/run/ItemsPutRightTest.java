package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.report.output.RunFacts;

/** Load items, rejected rows put right and flights that stand twice, together in one season; invented. */
class ItemsPutRightTest {

    private static final String FLIGHTS =
            "flight,date,tail,flaps,fuel left kg,fuel right kg,taxi kg,trip kg,load total kg,pax total,pilot";
    private static final String ITEMS = "flight,date,tail,zone,row,hold,tank,station,what,pieces,kg";
    private static final String J1 = "J1,2026-05-01,QI-JAA,5,3000,3000,200,4000,,,";
    private static final String J2 = "J2,2026-05-01,QI-JAB,5,3000,3000,200,4000,,,";

    @TempDir
    private Path folder;

    private Season season() {
        return new Season(folder);
    }

    private static List<String> counts(RunFacts facts) {
        return facts.inputs().stream()
                .map(input -> String.join(
                        " ",
                        input.name(),
                        input.rowsSeen() + " =",
                        Long.toString(input.accepted()),
                        Long.toString(input.rejected()),
                        Long.toString(input.blank()),
                        Long.toString(input.skipped())))
                .toList();
    }

    private List<String> flights(String... columns) throws IOException {
        return season().records(season().report("flights.csv")).stream()
                .map(row -> {
                    StringBuilder text = new StringBuilder();
                    for (String column : columns) {
                        text.append(text.length() == 0 ? "" : " ").append(row.get(column));
                    }
                    return text.toString();
                })
                .toList();
    }

    private List<String> rejected() throws IOException {
        return season().records(season().report("rejected.csv")).stream()
                .map(row -> row.get("steelyard_file") + ":" + row.get("steelyard_row"))
                .toList();
    }

    private String reasons(String file) throws IOException {
        StringBuilder reasons = new StringBuilder();
        for (CSVRecord row : season().records(season().report("rejected.csv"))) {
            reasons.append(row.get("steelyard_file").equals(file) ? row.get("steelyard_reasons") + "\n" : "");
        }
        return reasons.toString();
    }

    /** J1 is wanted twice, the same; J2 has an item in a hold that is not there. */
    private Season mess() throws IOException {
        return season().with("season-a.csv", List.of(FLIGHTS, J1, J2, "Total,,,,6000,6000,400,8000,,,"))
                .with("season-b.csv", List.of(FLIGHTS, J1, "J3,2026-05-02,QI-JAC,5,3000,3000,,4000,,,"))
                .with(
                        "items-1.csv",
                        List.of(
                                ITEMS,
                                "J1,2026-05-01,QI-JAA,A,,,,,adult,20,",
                                "J1,2026-05-01,QI-JAA,,,1,,,bags,15,",
                                "J2,2026-05-01,QI-JAB,A,,,,,adult,10,",
                                "J2,2026-05-01,QI-JAB,,,9,,,cargo,1,500",
                                "J3,2026-05-02,QI-JAC,E,,,,,adult,30,",
                                "Total,,,,,,,,,76,500"));
    }

    @Test
    void anItemPutRightJoinsItsFlightAndARepeatIsNoFlightOfItsOwn() throws Exception {
        RunFacts first = mess().audit();
        assertThat(counts(first))
                .containsExactly("season-a.csv 3 = 1 1 0 1", "season-b.csv 2 = 0 1 0 1", "items-1.csv 6 = 4 1 0 1");
        assertThat(rejected()).containsExactlyInAnyOrder("season-a.csv:3", "season-b.csv:3", "items-1.csv:5");
        assertThat(season().lines("skipped.csv"))
                .anyMatch(line -> line.startsWith("season-b.csv,,2,repeated,"))
                .anyMatch(line -> line.startsWith("items-1.csv,,7,totals,"));
        assertThat(flights("flight")).containsExactly("J1");

        season().putRight(
                        "put-right.csv",
                        new Season.Fix("items-1.csv", "5", "hold", "1"),
                        new Season.Fix("season-b.csv", "3", "taxi kg", "200"));
        RunFacts second = season().audit();
        assertThat(counts(second))
                .containsExactly(
                        "season-a.csv 3 = 1 0 0 2",
                        "season-b.csv 2 = 0 0 0 2",
                        "items-1.csv 6 = 4 0 0 2",
                        "put-right.csv 3 = 3 0 0 0");
        assertThat(season().lines("rejected.csv")).isEmpty();
        assertThat(second.inputs().get(3).notes()).contains("1 accepted row is a load item of the season's flights");
        assertThat(flights("flight")).containsExactly("J1", "J2", "J3");
        String joined = flights("flight", "tow_kg", "tow_cg_pct_mac").get(1);

        Season clean = new Season(folder.resolve("clean"))
                .with("season-a.csv", List.of(FLIGHTS, J2))
                .with(
                        "items-1.csv",
                        List.of(
                                ITEMS,
                                "J2,2026-05-01,QI-JAB,A,,,,,adult,10,",
                                "J2,2026-05-01,QI-JAB,,,1,,,cargo,1,500"));
        clean.audit();
        CSVRecord same = clean.records(clean.report("flights.csv")).get(0);
        assertThat(joined).isEqualTo("J2 " + same.get("tow_kg") + " " + same.get("tow_cg_pct_mac"));
    }

    @Test
    void anItemPutRightWronglyIsRejectedAgainWithItsPlaceAndSoIsItsFlight() throws Exception {
        mess().audit();
        season().putRight("put-right.csv", new Season.Fix("items-1.csv", "5", "hold", "8"));
        season().audit();
        assertThat(rejected()).containsExactlyInAnyOrder("season-a.csv:3", "season-b.csv:3", "items-1.csv:5");
        assertThat(reasons("items-1.csv")).contains("no such hold (value '8'");
    }

    @Test
    void itemsFindAFlightWhoseNumberIsPutRight() throws Exception {
        Season season = season().with("season-a.csv", List.of(FLIGHTS, "J1,2026-05-01,QI-XXX,5,3000,3000,200,4000,,,"))
                .with("items-1.csv", List.of(ITEMS, "J1,2026-05-01,QI-JAA,A,,,,,adult,20,"));
        season.audit();
        assertThat(rejected()).containsExactlyInAnyOrder("season-a.csv:2", "items-1.csv:2");
        assertThat(reasons("items-1.csv")).contains("no flight for this item");
        season.putRight("put-right.csv", new Season.Fix("season-a.csv", "2", "tail", "QI-JAA"));
        assertThat(counts(season.audit()))
                .containsExactly("season-a.csv 1 = 0 0 0 1", "items-1.csv 1 = 0 0 0 1", "put-right.csv 2 = 2 0 0 0");
        assertThat(flights("flight", "tail")).containsExactly("J1 QI-JAA");
    }

    @ParameterizedTest
    @CsvSource({"FIRST, 'J1 pilot=one'", "LAST, 'J1 pilot=two'", "NONE, ''", "ALL, 'J1 pilot=one,J1 pilot=two'"})
    void rowsOfOneFlightShareItsItemsAndThePolicySaysWhichStands(DuplicateRule rule, String standing) throws Exception {
        Season season = season().with("season-a.csv", List.of(FLIGHTS, J1 + "one"))
                .with("season-b.csv", List.of(FLIGHTS, J1 + "two"))
                .with("items-1.csv", List.of(ITEMS, "J1,2026-05-01,QI-JAA,A,,,,,adult,20,"));
        season.audit(rule, 2);
        assertThat(String.join(",", flights("flight", "extras"))).isEqualTo(standing);
        assertThat(season.lines("rejected.csv")).allMatch(line -> line.contains("the flight stands in "));
    }

    @Test
    void flightsAndItemsMayBeSheetsOfOneWorkbookInAnyOrder() throws Exception {
        Files.createDirectories(season().input());
        try (XSSFWorkbook book = new XSSFWorkbook();
                OutputStream out = Files.newOutputStream(season().input().resolve("book.xlsx"))) {
            sheet(book.createSheet("Load"), ITEMS, "J1,2026-05-01,QI-JAA,A,,,,,adult,20,", J2_ITEM);
            sheet(book.createSheet("Flights"), FLIGHTS, J1);
            book.write(out);
        }
        season().with("season-b.csv", List.of(FLIGHTS, J2));
        assertThat(counts(season().audit())).containsExactly("book.xlsx 3 = 3 0 0 0", "season-b.csv 1 = 1 0 0 0");
        assertThat(flights("flight")).containsExactly("J1", "J2");
    }

    private static final String J2_ITEM = "J2,2026-05-01,QI-JAB,A,,,,,adult,20,";

    private static void sheet(Sheet sheet, String... lines) {
        for (String line : lines) {
            Row row = sheet.createRow(sheet.getLastRowNum() + 1);
            String[] cells = line.split(",", -1);
            for (int i = 0; i < cells.length; i++) {
                row.createCell(i).setCellValue(cells[i]);
            }
        }
    }
}
