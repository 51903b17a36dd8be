package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.DataFormatter;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Page, workbook and terminal show the same figures of each table of a season in the same order. */
class SeasonTablesAgreeTest {

    private static final DataFormatter SHOWN = new DataFormatter(Locale.ROOT);

    @TempDir
    private static Path folder;

    private static String terminal;
    private static String page;
    private static XSSFWorkbook book;

    @BeforeAll
    static void audit() throws IOException {
        Path season = Files.createDirectories(folder.resolve("in"));
        for (String file : List.of("season-2026-06.csv", "season-2026-09.csv")) {
            Files.copy(Path.of("data-in/demo").resolve(file), season.resolve(file));
        }
        StringWriter said = new StringWriter();
        PrintWriter to = new PrintWriter(said, true);
        assertThat(Main.run(to, to, "audit", season.toString(), "-n", "two", "-o", folder.toString()))
                .isZero();
        terminal = said.toString();
        page = Files.readString(folder.resolve("two/report.html"), StandardCharsets.UTF_8);
        book = new XSSFWorkbook(folder.resolve("two/season.xlsx").toFile().getPath());
    }

    /** The rows of a table of the page, headings first, without what has no heading. */
    private static List<List<String>> onPage(String name) {
        Matcher table = Pattern.compile("(?s)aria-label=\"" + Pattern.quote(name) + "\"><table>(.*?)</table>")
                .matcher(page);
        assertThat(table.find()).as(name + " on the page").isTrue();
        List<List<String>> rows = new ArrayList<>();
        for (String row : table.group(1).split("<tr>", -1)) {
            List<String> cells = new ArrayList<>();
            Matcher cell = Pattern.compile("(?s)<t[hd][ >].*?</t[hd]>").matcher(row);
            while (cell.find()) {
                cells.add(cell.group()
                        .replaceAll("(?s)<svg.*?</svg>|<[^>]+>", "")
                        .replace("&#39;", "'")
                        .replace("&lt;", "<")
                        .replaceFirst("^–$", "")
                        .strip());
            }
            if (!cells.isEmpty()) {
                rows.add(cells);
            }
        }
        return rows;
    }

    /** Rows below a title of a sheet as people see them, headings first, until one has no second cell. */
    private static List<List<String>> inBook(String sheet, String title) {
        List<List<String>> rows = new ArrayList<>();
        int column = -1;
        for (Row row : book.getSheet(sheet)) {
            if (column < 0) {
                for (Cell cell : row) {
                    column = SHOWN.formatCellValue(cell).equals(title) ? cell.getColumnIndex() : column;
                }
                continue;
            }
            List<String> cells = new ArrayList<>();
            for (int i = column; i < (sheet.equals("Overview") ? column + 7 : row.getLastCellNum()); i++) {
                Cell cell = row.getCell(i);
                cells.add(cell == null ? "" : SHOWN.formatCellValue(cell).replaceFirst("^[●◇✕•] ", ""));
            }
            if (cells.stream().filter(cell -> !cell.isBlank()).count() < 2) {
                break;
            }
            if (sheet.equals("Overview")) {
                cells.removeIf(String::isBlank);
            }
            rows.add(cells);
        }
        assertThat(rows).as(title + " in the workbook").hasSizeGreaterThan(1);
        return rows;
    }

    private static List<String> column(List<List<String>> rows, String heading) {
        int at = rows.get(0).indexOf(heading);
        assertThat(at).as(heading + " of " + rows.get(0)).isNotNegative();
        return rows.subList(1, rows.size()).stream().map(row -> row.get(at)).toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Overview|Typical take-off trim|Type;Flaps;Flights;5 %;Median;95 %",
                "Overview|Kinds of findings|Kind;Severity;Flights;Findings",
                "Overview|Tails by share breached|Tail;Flights;Breached;Marginal",
                "Overview|Routes by share breached|Route;Flights;Breached;Marginal",
                "Trim spread|Take-off trim|Type;Flaps;n;Mean;SD;Min;P5;P25;Median;P75;P95;Max",
                "Trim spread|Take-off CG in % MAC|Type;Flaps;n;Mean;SD;Min;P5;P25;Median;P75;P95;Max;Marginal;Breached",
                "Run facts|Season files (rows seen = accepted + rejected + blank + skipped)|"
                        + "File;Rows seen;Accepted;Rejected;Blank;Skipped"
            })
    void pageAndWorkbookShowTheSameFiguresInTheSameOrder(String sheet, String title, String headings) {
        List<List<String>> inBook = inBook(sheet, title);
        List<List<String>> onPage = onPage(title);
        for (String heading : headings.replace("'", "").split(";", -1)) {
            List<String> book = column(inBook, heading);
            List<String> shown = column(onPage, heading);
            int first = sheet.equals("Overview") ? Math.min(book.size(), shown.size()) : book.size();
            assertThat(first).isPositive();
            assertThat(shown.subList(0, first)).as(title + ": " + heading).isEqualTo(book.subList(0, first));
        }
    }

    @Test
    void theTerminalShowsTheFirstBreachesOfThePage() {
        List<List<String>> kinds = onPage("Kinds of findings");
        List<String> lines = terminal.lines()
                .dropWhile(line -> !line.equals("Most frequent breaches"))
                .skip(2)
                .takeWhile(line -> line.matches(" .*\\d  +\\d+"))
                .map(line -> line.strip().replaceAll("  +", "|"))
                .toList();
        List<String> expected = kinds.stream()
                .filter(row -> row.contains("breach"))
                .map(row -> row.get(0) + "|" + row.get(3) + "|" + row.get(4))
                .limit(4)
                .toList();
        assertThat(lines).hasSizeGreaterThan(1).isEqualTo(expected);
    }
}
