package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.cli.option.ExitCode;

/**
 * A season whose texts all have one hash code, as those made of Aa and BB do, is audited about as fast as one of other
 * texts. What is compared is the time that the calling thread computes, as the machine may have other work to do.
 */
class CollidingTextsTest {

    private static final int LETTERS = 15;
    private static final int FLIGHTS = 2000;
    private static final List<String> NAMED = List.of("gate", "dispatcher", "loader", "captain", "handler", "stand");

    /** Flight, tail, departure, pilot and the named columns, each of texts of its own. */
    private static final int TEXTS = 4 + NAMED.size();

    @TempDir
    private Path folder;

    private Path config;

    @BeforeEach
    void aFleetOfBothKindsOfNames() throws IOException {
        config = folder.resolve("config");
        try (Stream<Path> shipped = Files.walk(Path.of("config"))) {
            for (Path from : shipped.toList()) {
                Path to = config.resolve(Path.of("config").relativize(from).toString());
                if (Files.isDirectory(from)) {
                    Files.createDirectories(to);
                } else {
                    Files.copy(from, to);
                }
            }
        }
    }

    /** All of one hash code. */
    private static String colliding(int number) {
        StringBuilder name = new StringBuilder();
        for (int bit = 0; bit < LETTERS; bit++) {
            name.append((number >> bit & 1) == 0 ? "Aa" : "BB");
        }
        return name.toString();
    }

    /** As long as those, and of many hash codes. */
    private static String harmless(int number) {
        return "Aa".repeat(LETTERS - 3) + String.format(Locale.ROOT, "%06d", number);
    }

    private Path season(String name, IntFunction<String> text) throws IOException {
        Path season = Files.createDirectory(folder.resolve(name));
        try (BufferedWriter out = Files.newBufferedWriter(season.resolve("season-1.csv"))) {
            out.write("date,to,flaps,tow kg,tow cg % mac,tail,flight,from,pilot," + String.join(",", NAMED) + "\n");
            for (int flight = 0; flight < FLIGHTS; flight++) {
                out.write("2026-05-01,B,5,60000,22");
                for (int i = 0; i < TEXTS; i++) {
                    out.write("," + text.apply(flight * TEXTS + i));
                }
                out.write("\n");
            }
        }
        return season;
    }

    /** Processor time of this thread. */
    private Duration audit(String name, IntFunction<String> text) throws IOException {
        Path season = season(name, text);
        try (BufferedWriter fleet = Files.newBufferedWriter(config.resolve("fleet.csv"))) {
            fleet.write("tail,type,basic mass,basic CG\n");
            for (int flight = 0; flight < FLIGHTS; flight++) {
                fleet.write(text.apply(flight * TEXTS) + ",jet180,41000 kg,25 % MAC\n");
            }
        }
        StringWriter said = new StringWriter();
        PrintWriter lines = new PrintWriter(said);
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        int exitCode = Main.run(
                lines,
                lines,
                "audit",
                season.toString(),
                "--config",
                config.toString(),
                "--reports",
                folder.resolve("reports").toString(),
                "--by",
                String.join(",", NAMED));
        long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        assertThat(exitCode).as(said.toString()).isEqualTo(ExitCode.FINISHED);
        assertThat(said.toString()).containsPattern("flights +" + String.format(Locale.ROOT, "%,d", FLIGHTS));
        return Duration.ofNanos(end - begin);
    }

    @Test
    void textsOfOneHashCodeAreAuditedAboutAsFastAsOthers() throws IOException {
        Duration usual = audit("harmless", CollidingTextsTest::harmless);
        Duration colliding = audit("colliding", CollidingTextsTest::colliding);
        assertThat(colliding).isLessThan(usual.multipliedBy(2).plusSeconds(1));
    }
}
