package org.steelyard.read.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.row.Fixtures;
import org.steelyard.read.season.ReadAll;
import org.steelyard.samples.Plain;

/** The same season as CSV and as XLSX gives the same loadings, bit for bit, and the same reasons. */
class SameContentTest {

    private static final List<String> HEADINGS = List.of(
            "Flight", "Date", "Tail", "Flaps", "Pax A", "Hold 1", "Left", "Right", "Taxi", "Trip", "Trim", "Pilot");
    private static final long SEED = 77;

    @TempDir
    private Path folder;

    private static List<List<String>> rows() {
        Random random = new Random(SEED);
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < 300; i++) {
            rows.add(List.of(
                    "F" + i,
                    LocalDate.of(2024, 1, 1).plusDays(i).toString(),
                    i % 50 == 7 ? "SX-BAX" : "SX-BAA",
                    i % 3 == 0 ? "" : "5",
                    Integer.toString(random.nextInt(40)),
                    Double.toString(random.nextInt(20_000) / 10.0),
                    Double.toString(random.nextDouble() * 4000),
                    i % 40 == 3 ? "-1" : Integer.toString(random.nextInt(4000)),
                    "100",
                    "1500",
                    i % 2 == 0 ? "0.2 DN" : "0.3",
                    i % 5 == 0 ? "" : "Ann"));
        }
        return rows;
    }

    private Path csv(List<List<String>> rows) throws IOException {
        StringBuilder text = new StringBuilder(String.join(";", HEADINGS)).append("\r\n");
        rows.forEach(row -> text.append(String.join(";", row)).append("\r\n"));
        return Files.writeString(folder.resolve("s.csv"), text);
    }

    private Path xlsx(Workbook workbook, List<List<String>> rows) throws IOException {
        CellStyle style = workbook.createCellStyle();
        style.setDataFormat((short) 14);
        Sheet sheet = workbook.createSheet("S");
        Row headings = sheet.createRow(0);
        for (int i = 0; i < HEADINGS.size(); i++) {
            headings.createCell(i).setCellValue(HEADINGS.get(i));
        }
        for (List<String> row : rows) {
            Row out = sheet.createRow(sheet.getLastRowNum() + 1);
            for (int i = 0; i < row.size(); i++) {
                set(out.createCell(i), row.get(i), style);
            }
        }
        Path file = folder.resolve("s.xlsx");
        try (workbook;
                OutputStream out = Files.newOutputStream(file)) {
            workbook.write(out);
        }
        return file;
    }

    private static void set(Cell cell, String text, CellStyle date) {
        if (cell.getColumnIndex() == 1) {
            cell.setCellValue(LocalDate.parse(text));
            cell.setCellStyle(date);
        } else if (!Double.isNaN(NumberGrammar.parse(text, '.', true))) {
            cell.setCellValue(Double.parseDouble(text));
        } else {
            cell.setCellValue(text);
        }
    }

    private static List<Loading> withoutOrigin(ReadAll read) {
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

    @Test
    void textAndWorkbookGiveEqualLoadingsAndReasons() throws IOException {
        ColumnMap map = Fixtures.MAP;
        ReadAll csv = ReadAll.of(csv(rows()), map);
        assertThat(csv.accepted()).hasSizeGreaterThan(250);
        assertThat(csv.rejected()).hasSizeGreaterThan(10);
        for (Workbook workbook : List.of(new XSSFWorkbook(), new SXSSFWorkbook(50))) {
            ReadAll xlsx = ReadAll.of(xlsx(workbook, rows()), map);
            assertThat(withoutOrigin(xlsx)).isEqualTo(withoutOrigin(csv));
            assertThat(xlsx.reasons())
                    .isEqualTo(csv.reasons().stream()
                            .map(reason -> reason.replace("s.csv", "s.xlsx[S]"))
                            .toList());
        }
    }
}
