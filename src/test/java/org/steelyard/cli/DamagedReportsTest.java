package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.cli.option.ExitCode;

/** Reports that are not as the audit left them are refused by name before anything is compared. */
class DamagedReportsTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private Path reports;

    @BeforeEach
    void audited() throws IOException {
        Path season = Files.createDirectories(folder.resolve("summer"));
        List<String> lines = Files.readAllLines(Path.of("data-in/demo/season-2026-04.csv"), StandardCharsets.UTF_8);
        Files.write(season.resolve("season-1.csv"), lines.subList(0, 60), StandardCharsets.UTF_8);
        assertThat(run("audit", season.toString(), "-o", folder + "/reports", "-q"))
                .as(err.toString())
                .isZero();
        reports = folder.resolve("reports/summer");
    }

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    private int against() {
        return run("against", reports.toString(), reports.toString(), "-o", folder + "/compared");
    }

    @Test
    void wholeReportsAreCompared() {
        assertThat(against()).as(err.toString()).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "flights.csv, half",
        "flights.csv, empty",
        "flights.csv, double",
        "flights.csv, column",
        "flights.csv, gone",
        "flights.csv, huge",
        "findings.csv, half",
        "findings.csv, empty",
        "findings.csv, double",
        "findings.csv, gone",
        "run.json, half",
        "run.json, empty",
        "run.json, other",
        "run.json, gone"
    })
    void damageIsRefusedByName(String name, String damage) throws IOException {
        Path file = reports.resolve(name);
        String text = Files.readString(file, StandardCharsets.UTF_8);
        switch (damage) {
            case "gone" -> Files.delete(file);
            case "empty" -> Files.writeString(file, "");
            case "half" -> Files.writeString(file, text.substring(0, text.length() / 2));
            case "double" -> Files.writeString(file, text + text.substring(text.indexOf('\n') + 1));
            case "column" -> Files.writeString(file, text.replaceAll("(?m)^[^,]*,", ""));
            case "huge" -> Files.writeString(file, text.replaceFirst("(?s)(\n.*?),2\\d\\.\\d+,", "$1,1e308,"));
            default -> Files.writeString(file, "{\"program\": \"other\"}");
        }
        assertThat(against()).as(out.toString()).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains(name).contains("audit");
        assertThat(folder.resolve("compared")).doesNotExist();
    }
}
