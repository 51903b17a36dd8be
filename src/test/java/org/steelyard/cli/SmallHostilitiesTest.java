package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.cli.option.ExitCode;

/** What the smaller commands do with inputs that are out of all proportion, or that would steer a terminal. */
class SmallHostilitiesTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    @Test
    void aDraftedMapIsShownWithoutSignsThatSteerATerminal() throws IOException {
        Path file = folder.resolve("trip\u202Es.csv");
        Files.writeString(
                file,
                "Flight,Date,Tail,Pax\u001B[31m A,re\u202Emark,Fuel (kg)\nT1,2026-05-01,N\u001B[2J1,10,x\u202Ey\u009B1m,500\n");
        run("propose-map", file.toString());
        assertThat(out.toString() + err).contains("Pax").doesNotContainPattern("[\u001B\u009B\u202E]");
    }

    @Test
    void aHeadingRepeatedWithoutEndIsToldOnceWithACount() throws IOException {
        String twice = IntStream.range(0, 1_500).mapToObj(i -> ",pilot").collect(Collectors.joining());
        Path file =
                Files.writeString(folder.resolve("season-1.csv"), "flight,date,tail" + twice + "\nT1,2026-05-01,N1\n");
        run("audit", file.toString(), "-o", folder.resolve("out").toString());
        assertThat((out.toString() + err).lines().filter(line -> line.contains("the heading is there twice")))
                .hasSizeLessThanOrEqualTo(21);
        assertThat(out.toString() + err).contains("1,479 more");
    }

    @Test
    void keysWithoutEndThatNobodyKnowsAreToldWithACount() throws IOException {
        Path config = Files.createDirectory(folder.resolve("config"));
        String keys =
                IntStream.range(0, 20_000).mapToObj(i -> "k" + i + ": 1\n").collect(Collectors.joining());
        Files.writeString(config.resolve("policy.yaml"), keys);
        assertThat(run("check-config", "--config", config.toString())).isEqualTo(ExitCode.CANNOT);
        String said = out.toString() + err;
        assertThat(said.lines().count()).isLessThan(150);
        assertThat(said).contains("policy.yaml: ").contains(" more faults of this file");
    }

    @Test
    void aCgThatNoAircraftHasIsNoPair() throws IOException {
        String pairs = IntStream.range(0, 12)
                .mapToObj(i -> (15 + i) + " % MAC," + (5 - 0.2 * i) + "\n")
                .collect(Collectors.joining());
        String huge = "1" + "0".repeat(300);
        Path file = Files.writeString(
                folder.resolve("q.csv"), "cg,setting\n" + pairs + huge + " % MAC,1\n20 % MAC," + huge + "\n");
        assertThat(run("fit-scale", file.toString(), "--pairs", "--type", "jet180", "--flaps", "5"))
                .isEqualTo(ExitCode.CANNOT);
        assertThat(out.toString()).doesNotContain("NaN");
        assertThat(err.toString())
                .contains("q.csv:14:cg: no position near the chord")
                .contains("q.csv:15:setting: no trim setting");
    }

    @Test
    void theRangeOfACardIsShownInFewDigits() {
        run("cards", "--cg-step", "0.01%", "-o", folder.resolve("cards").toString());
        assertThat(out.toString() + err).contains("more than 60").doesNotContainPattern("\\d\\.\\d{5}");
    }

    @Test
    void outputThatNobodyCanReadIsNoSuccess() {
        Writer lost = new Writer() {
            @Override
            public void write(char[] text, int from, int length) throws IOException {
                throw new IOException("No space left on device");
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
        int exitCode = Main.run(new PrintWriter(lost, true), new PrintWriter(err, true), "--help");
        assertThat(exitCode).isEqualTo(ExitCode.CANNOT);
        assertThat(err.toString()).contains("The output could not be written");
    }
}
