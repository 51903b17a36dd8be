package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.hostile.HostileFiles;

/**
 * All hostile files in one season with one that is in order: the program says what is wrong with each and finishes the
 * rest. Those that hold nothing to read also alone.
 */
class HostileSeasonTest {

    private static final List<HostileFiles.Case> CASES = HostileFiles.all();

    @TempDir
    private static Path folder;

    private static int exitCode;
    private static String said;
    private static String fromReports;

    @BeforeAll
    static void auditAll() throws IOException {
        Path season = Files.createDirectory(folder.resolve("season"));
        Files.writeString(season.resolve("season-zz.csv"), HostileFiles.good("LAST"), StandardCharsets.UTF_8);
        for (HostileFiles.Case one : CASES) {
            one.maker().make(season.resolve(one.name()));
        }
        StringWriter lines = new StringWriter();
        exitCode = audit(season, lines);
        said = lines.toString();
        Path reports = folder.resolve("reports").resolve("season");
        fromReports = "";
        for (String name : List.of("rejected.csv", "skipped.csv", "run.json")) {
            fromReports += Files.readString(reports.resolve(name), StandardCharsets.UTF_8);
        }
    }

    private static int audit(Path season, StringWriter lines) {
        PrintWriter writer = new PrintWriter(lines, true);
        return Main.run(
                writer,
                writer,
                "audit",
                season.toString(),
                "--threads",
                "2",
                "--reports",
                folder.resolve("reports").toString());
    }

    static Stream<HostileFiles.Case> cases() {
        return CASES.stream();
    }

    static Stream<HostileFiles.Case> alone() {
        return CASES.stream().filter(HostileFiles.Case::alone);
    }

    @Test
    void theRestOfTheSeasonIsFinished() throws IOException {
        assertThat(exitCode).isEqualTo(ExitCode.FINISHED);
        assertThat(said).doesNotContain("fault of the program", "\tat ");
        assertThat(Files.readString(folder.resolve("reports/season/flights.csv"), StandardCharsets.UTF_8))
                .contains("season-zz.csv,2,LAST,2026-05-01,QI-JAA");
    }

    /** Quotation marks are those of the table that the line is from. */
    private static boolean matches(HostileFiles.Case one, String line) {
        String said = Pattern.quote(one.name() + one.said()).replace("*", "\\E[a-z]+\\Q");
        return Pattern.compile(said).matcher(line.replace("\"", "")).find();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void everyHostileFileIsNamedWithItsReason(HostileFiles.Case one) {
        assertThat((said + fromReports).lines().filter(line -> line.contains(one.name())))
                .anyMatch(line -> matches(one, line));
    }

    @ParameterizedTest
    @MethodSource("alone")
    void aFileThatHoldsNothingToReadEndsWithExitCodeTwo(HostileFiles.Case one) throws IOException {
        Path alone = Files.createDirectories(folder.resolve("alone-" + one.name()));
        one.maker().make(alone.resolve(one.name()));
        StringWriter lines = new StringWriter();
        assertThat(audit(alone, lines)).isEqualTo(ExitCode.CANNOT);
        assertThat(lines.toString()).contains(one.name() + one.said());
    }
}
