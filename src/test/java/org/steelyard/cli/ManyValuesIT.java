package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.IntFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.cli.option.ExitCode;

/** A column of the policy's grouping with a value for each flight, in a process of its own with little memory. */
class ManyValuesIT {

    private static final int DAYS = 365;

    @TempDir
    private Path folder;

    private Path season(int flights, IntFunction<String> pilot) throws IOException {
        Path file = folder.resolve("season-1.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(
                    "flight,date,tail,from,to,pilot,flaps,pax total,load total kg,fuel total kg,taxi kg,trip kg,trim set\n");
            for (int i = 0; i < flights; i++) {
                LocalDate day = LocalDate.of(2025, 1, 1).plusDays(i % DAYS);
                out.write("F" + i + "," + day + ",QI-JBF,AMBRP,HIMOR," + pilot.apply(i) + ",5," + (100 + i % 60)
                        + ",1500,8000,130,4010,0.5\n");
            }
        }
        return file;
    }

    private String audit(Path season, String memory, int seconds) throws IOException, InterruptedException {
        Path log = folder.resolve("log");
        List<String> command = List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-Xmx" + memory,
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                "org.steelyard.cli.Main",
                "audit",
                season.toString(),
                "-o",
                folder.resolve("out").toString(),
                "--quiet");
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(log.toFile())
                .start();
        boolean ended = process.waitFor(seconds, TimeUnit.SECONDS);
        process.destroyForcibly().waitFor();
        String said = Files.readString(log);
        assertThat(ended).as("ended within " + seconds + " s: " + said).isTrue();
        assertThat(process.exitValue()).as(said).isEqualTo(ExitCode.FINISHED);
        return said;
    }

    @Test
    void aPilotForEachOfAHundredThousandFlightsIsNoGroupingAndFitsInLittleMemory() throws Exception {
        String said = audit(season(100_000, i -> "pilot" + i), "256m", 180);
        assertThat(said).contains("No statistics by 'pilot': it has more than 50,000 different values.");
        assertThat(folder.resolve("out/season-1/flights.csv")).exists();
    }
}
