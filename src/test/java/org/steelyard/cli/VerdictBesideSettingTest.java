package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;

/** A setting is never shown as if the flight could go, where it could not. Take-off of the jet: at most 74,500 kg. */
class VerdictBesideSettingTest {

    private static final EdgeTable EDGES = new EdgeTable(VerdictBesideSettingTest.class);
    private static final String WARNING = "out of limits – do not depart as loaded";
    private static final List<String> HEAVY = List.of("--tail", "QI-JAA", "-f", "5", "-m", "76t", "-g", "24%");
    private static final List<String> FINE = List.of("--tail", "QI-JAA", "-f", "5", "-m", "63t", "-g", "24%");

    @TempDir
    private Path folder;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static String set(List<String> args, String... more) {
        StringWriter out = new StringWriter();
        String[] all = Stream.of(Stream.of("set"), args.stream(), Stream.of(more))
                .flatMap(part -> part)
                .toArray(String[]::new);
        assertThat(Main.run(new PrintWriter(out, true), new PrintWriter(out, true), all))
                .as(out.toString())
                .isZero();
        return out.toString();
    }

    /** What stands on the line of the setting and on the one below it. */
    private static String besideSetting(String terminal) {
        List<String> lines = terminal.lines().toList();
        int at = 0;
        while (!lines.get(at).contains("trim to set")) {
            at++;
        }
        return lines.get(at).strip() + "; " + lines.get(at + 1).strip();
    }

    @Test
    void theTerminalSaysItBesideTheSetting() {
        EDGES.row(
                EdgeTopic.VERDICT_FIRST,
                "set, 76,000 kg at take-off where 74,500 are permitted, at the setting",
                "Take-off trim to set: 0.9 UP (breached); OUT OF LIMITS - DO NOT DEPART AS LOADED",
                besideSetting(set(HEAVY, "--ascii")));
        EDGES.row(
                EdgeTopic.VERDICT_FIRST,
                "set, 63,000 kg in the midst of the envelope, at the setting",
                "Take-off trim to set: 0.9 UP (clean); ",
                besideSetting(set(FINE, "--ascii")));
        assertThat(set(HEAVY)).contains(WARNING.toUpperCase(Locale.ROOT));
        String terminal = set(HEAVY);
        assertThat(terminal.indexOf("Verdict: BREACHED")).isPositive().isLessThan(terminal.indexOf("trim to set"));
    }

    /** The flight may go: it is the recorded setting that is wrong. */
    @Test
    void aRecordedSettingThatIsOffPutsNoFlightOutOfLimits() {
        EDGES.row(
                EdgeTopic.VERDICT_FIRST,
                "set, 63,000 kg in the midst of the envelope, but 3.0 UP recorded where 0.9 UP is right",
                "no warning",
                set(FINE, "-r", "3.0UP").contains("DO NOT DEPART") ? "warning" : "no warning");
    }

    @Test
    void thePageSaysItFirstAndBesideTheSetting() throws IOException {
        Path file = folder.resolve("a.html");
        set(HEAVY, "--write", file.toString());
        String page = Files.readString(file);
        int verdict = page.indexOf("Verdict: ");
        int setting = page.indexOf("class=\"setting out\"");
        assertThat(verdict).isPositive().isLessThan(setting);
        assertThat(page.indexOf(WARNING)).isGreaterThan(setting).isLessThan(page.indexOf("exact trim"));
        assertThat(page.indexOf("Verdict: ", verdict + 1)).isNegative();
        set(FINE, "--write", file.toString());
        assertThat(Files.readString(file)).contains("Verdict: ").doesNotContain(WARNING, "setting out\"");
    }

    private List<String> cells(List<String> args) throws IOException {
        Path file = folder.resolve("a.xlsx");
        set(args, "--write", file.toString());
        List<String> cells = new ArrayList<>();
        try (InputStream in = Files.newInputStream(file);
                XSSFWorkbook book = new XSSFWorkbook(in)) {
            book.getSheetAt(0)
                    .forEach(row -> row.forEach(cell -> {
                        if (!cell.toString().isEmpty()) {
                            cells.add(cell.toString());
                        }
                    }));
        }
        return cells;
    }

    @Test
    void theWorkbookSaysItFirstAndBesideTheSetting() throws IOException {
        List<String> cells = cells(HEAVY);
        int setting = cells.indexOf("0.9 UP");
        assertThat(cells.indexOf("Verdict")).isBetween(0, setting);
        assertThat(cells.get(cells.indexOf("Verdict") + 1)).endsWith("breached");
        assertThat(cells.get(setting + 1)).endsWith(WARNING);
        assertThat(cells(FINE)).contains("Verdict").noneMatch(cell -> cell.contains(WARNING));
    }

    @Test
    void whatIsNotCheckedIsSaid() {
        String sentence = "no CG is checked at zero fuel: the type has no envelope for it";
        String single = set(List.of("--type", "single4", "-m", "2300lb", "-g", "95in"));
        assertThat(single.replaceAll("\\s+", " ")).contains(sentence);
        assertThat(set(FINE)).doesNotContain("no CG is checked");
        StringWriter out = new StringWriter();
        Main.run(
                new PrintWriter(out, true), new PrintWriter(out, true), "check-config", "--type", "single4", "--brief");
        assertThat(out.toString()).contains("envelopes: " + sentence);
    }
}
