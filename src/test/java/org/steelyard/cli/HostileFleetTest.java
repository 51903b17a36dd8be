package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.cli.option.ExitCode;

/**
 * A fleet of very many tails and a season that names each of them, or as many that are not in it. In the gate 1,000;
 * {@code -Dsteelyard.tails=10000} for more.
 */
class HostileFleetTest {

    private static final int TAILS = Integer.getInteger("steelyard.tails", 1_000);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"QZ", "QX"})
    void aSeasonOfVeryManyTailsIsFinished(String prefix) throws IOException {
        Path config = config();
        StringBuilder season = new StringBuilder("flight,date,tail,tow kg,tow cg % mac,pilot\n");
        for (int i = 0; i < TAILS; i++) {
            season.append(String.format(Locale.ROOT, "T%d,2026-05-01,%s-%05d,61000,25.5,owl\n", i, prefix, i));
        }
        Path file = Files.writeString(folder.resolve("s.csv"), season, StandardCharsets.UTF_8);
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said, true);
        int exitCode = Main.run(
                writer,
                writer,
                "audit",
                file.toString(),
                "--config",
                config.toString(),
                "--threads",
                "2",
                "--reports",
                folder.resolve("reports").toString());
        assertThat(exitCode).isEqualTo(ExitCode.FINISHED);
        Path reports = folder.resolve("reports/s");
        boolean known = prefix.equals("QZ");
        assertThat(rows(reports.resolve("flights.csv"))).isEqualTo(known ? TAILS : 0);
        assertThat(rows(reports.resolve("rejected.csv"))).isEqualTo(known ? 0 : TAILS);
        if (!known) {
            assertThat(Files.readString(reports.resolve("rejected.csv"), StandardCharsets.UTF_8))
                    .contains(
                            "unknown tail (value 'QX-00007'; expected a tail of the fleet; nearest QZ-00007, QZ-00000,"
                                    + " QZ-00001)");
        }
    }

    private static int rows(Path file) throws IOException {
        return (int) Files.readAllLines(file, StandardCharsets.UTF_8).stream()
                .skip(1)
                .filter(line -> line.startsWith("s.csv,"))
                .count();
    }

    private Path config() throws IOException {
        Path config = folder.resolve("config");
        try (Stream<Path> shipped = Files.walk(Path.of("config"))) {
            for (Path one : shipped.toList()) {
                Path copy = config.resolve(Path.of("config").relativize(one).toString());
                if (Files.isDirectory(one)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(one, copy);
                }
            }
        }
        List<String> shipped = Files.readAllLines(config.resolve("fleet.csv"), StandardCharsets.UTF_8);
        StringBuilder fleet = new StringBuilder(shipped.get(0)).append('\n');
        for (int i = 0; i < TAILS; i++) {
            fleet.append(String.format(Locale.ROOT, "QZ-%05d,jet180,40950 kg,24.2 %% MAC,\n", i));
        }
        Files.writeString(config.resolve("fleet.csv"), fleet, StandardCharsets.UTF_8);
        return config;
    }
}
