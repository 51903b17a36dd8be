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
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** What terminal, page and workbook say first of a season is the same, in the same order. */
class OverviewsAgreeTest {

    private static final EdgeTable EDGES = new EdgeTable(OverviewsAgreeTest.class);

    @TempDir
    private static Path folder;

    private static String terminal;
    private static String page;
    private static List<List<String>> overview;

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
        try (XSSFWorkbook book =
                new XSSFWorkbook(folder.resolve("two/season.xlsx").toFile().getPath())) {
            overview = new ArrayList<>();
            for (Row row : book.getSheet("Overview")) {
                List<String> cells = new ArrayList<>();
                row.forEach(cell -> cells.add(cell.toString()));
                overview.add(cells);
            }
        }
    }

    @AfterAll
    static void table() {
        EDGES.write();
    }

    private static List<String> all(String text, String regex) {
        return Pattern.compile(regex)
                .matcher(text)
                .results()
                .map(OverviewsAgreeTest::line)
                .toList();
    }

    /** Kind, flight and sentence, in small letters and without an end. */
    private static String line(MatchResult found) {
        return line(found.group(1), found.group(2), found.group(3));
    }

    private static String line(String kind, String flight, String sentence) {
        return (kind.strip() + " " + flight + ": " + sentence)
                .replaceFirst("\\.$", "")
                .replace("&#39;", "'")
                .toLowerCase(Locale.ROOT);
    }

    @Test
    void theSameExceedancesInTheSameOrder() {
        List<String> onTerminal = all(terminal, "(?m)^  (\\S.{8})  \\d{4}-\\d\\d-\\d\\d (\\S+) \\S+: (.*)$");
        String list = page.substring(page.indexOf("id=\"overview-worst\""), page.indexOf("id=\"overview-trim\""))
                .replaceAll("(?s)<svg.*?</svg>", "")
                .replaceAll("<[^>]+>", "");
        List<String> onPage = all(list, "(?m)(?:^|outside)\\s*(\\S[\\w -]*?) (\\S+) \\d{4}-\\d\\d-\\d\\d, \\S+: (.*)$");
        List<String> inBook = overview.stream()
                .filter(cells -> cells.size() > 6 && cells.get(1).matches("\\d{4}-\\d\\d-\\d\\d"))
                .map(cells -> line(cells.get(0), cells.get(2), cells.get(7)))
                .toList();
        assertThat(onTerminal).hasSizeGreaterThan(4);
        assertThat(onPage).isEqualTo(onTerminal);
        assertThat(inBook).isEqualTo(onTerminal);
        EDGES.row(
                EdgeTopic.OUTPUTS_AGREE,
                "exceedances first shown of two months: the same and in one order on terminal, page and workbook",
                "true, true",
                onPage.equals(onTerminal) + ", " + inBook.equals(onTerminal));
    }

    @Test
    void theSameWorstTailAndRoute() {
        List<String> sentences =
                terminal.lines().filter(line -> line.startsWith("Worst ")).toList();
        assertThat(sentences).hasSize(2).allSatisfy(sentence -> assertThat(page).contains(sentence));
        assertThat(overview.stream().flatMap(List::stream))
                .anySatisfy(text -> assertThat(text).contains(String.join(" ", sentences)));
    }
}
