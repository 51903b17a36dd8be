package org.steelyard.report.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.report.file.Racer.Round;

/**
 * Two to four processes that write to one place at drawn moments. {@code -Dsteelyard.rounds=1000} makes more rounds.
 */
class RunsAtOnceTest {

    private static final long SEED = 20261130;
    private static final int ROUNDS = Integer.getInteger("steelyard.rounds", 20);
    private static final int MOST = 4;

    @TempDir
    private static Path parent;

    private static final List<Process> RACERS = new ArrayList<>();
    private static final List<PrintWriter> TOLD = new ArrayList<>();
    private static final List<BufferedReader> SAID = new ArrayList<>();

    private final Random random = new Random(SEED);
    private final Map<String, Integer> met = new TreeMap<>();

    @BeforeAll
    static void start() throws IOException {
        for (int i = 0; i < MOST; i++) {
            Process racer = new ProcessBuilder(
                            Path.of(System.getProperty("java.home"), "bin", "java")
                                    .toString(),
                            "-XX:TieredStopAtLevel=1",
                            "-XX:+UseSerialGC",
                            "-cp",
                            System.getProperty("java.class.path"),
                            Racer.class.getName(),
                            name(i))
                    .redirectError(ProcessBuilder.Redirect.INHERIT)
                    .start();
            RACERS.add(racer);
            TOLD.add(new PrintWriter(racer.outputWriter(StandardCharsets.UTF_8), true));
            SAID.add(racer.inputReader(StandardCharsets.UTF_8));
        }
    }

    @AfterAll
    static void stop() {
        RACERS.forEach(Process::destroyForcibly);
    }

    private static String name(int racer) {
        return "racer " + racer;
    }

    @Test
    void exactlyOneOfThoseThatMeetGoesThroughAndTheOthersSaySo() throws IOException {
        for (int round = 0; round < ROUNDS; round++) {
            Path place = parent.resolve("out" + (round % 3 == 0 ? "" : round));
            List<String> said = race(Round.HOLD, place);
            assertThat(said).as("round " + round).containsOnlyOnce("taken").allMatch(RunsAtOnceTest::isFair);
            int holder = said.indexOf("taken");
            TOLD.get(holder).println("go");
            assertThat(SAID.get(holder).readLine()).as("round " + round).isEqualTo("done");
            assertThat(content(place)).as("round " + round).isEqualTo(each(name(holder)));
        }
        System.out.println(ROUNDS + " rounds, seed " + SEED + ": " + met);
    }

    @Test
    void whoeverWritesWritesAllOfIt() throws IOException {
        for (int round = 0; round < ROUNDS; round++) {
            Path place = parent.resolve("all" + (round % 3 == 0 ? "" : round));
            List<String> said = race(Round.WRITE, place);
            assertThat(said).as("round " + round).contains("done").allMatch(RunsAtOnceTest::isFair);
            List<Map<String, String>> fair = IntStream.range(0, said.size())
                    .filter(i -> said.get(i).equals("done"))
                    .mapToObj(i -> each(name(i)))
                    .toList();
            assertThat(fair).as("round " + round).contains(content(place));
        }
        System.out.println(ROUNDS + " rounds, seed " + SEED + ": " + met);
    }

    @Test
    void whoeverLeavesWithoutAFileLeavesNone() throws IOException {
        for (int round = 0; round < ROUNDS; round++) {
            Path place = parent.resolve("left").resolve("deep");
            List<String> said = race(Round.LEAVE, place);
            assertThat(said).as("round " + round).contains("done").allMatch(RunsAtOnceTest::isFair);
            assertThat(content(place)).as("round " + round).isEmpty();
        }
    }

    @Test
    void aSingleFileIsWholeWhoeverWasLast() throws IOException {
        Path place = Files.createDirectories(parent.resolve("single"));
        for (int round = 0; round < ROUNDS; round++) {
            List<String> said = race(Round.FILE, place.resolve("a.html"));
            assertThat(said).as("round " + round).containsOnly("done");
            assertThat(content(place))
                    .as("round " + round)
                    .hasSize(1)
                    .allSatisfy((name, text) -> assertThat(text).startsWith("racer "));
        }
    }

    private List<String> race(Round round, Path place) throws IOException {
        int racers = 2 + random.nextInt(MOST - 1);
        int spread = random.nextBoolean() ? 1 : 3000;
        for (int i = 0; i < racers; i++) {
            TOLD.get(i).println(round + " " + random.nextInt(spread) + " " + place);
        }
        List<String> said = new ArrayList<>();
        for (int i = 0; i < racers; i++) {
            said.add(SAID.get(i).readLine());
        }
        said.forEach(one -> met.merge(one.split(" ", 2)[0], 1, Integer::sum));
        return said;
    }

    private static boolean isFair(String said) {
        return said.equals("taken")
                || said.equals("done")
                || (said.startsWith("refused ") && said.contains("another run is writing into it at this moment"));
    }

    private static Map<String, String> each(String content) {
        Map<String, String> files = new TreeMap<>();
        Racer.NAMES.forEach(name -> files.put(name, content));
        return files;
    }

    /** All files, hidden ones too, but the list of them. */
    private static Map<String, String> content(Path folder) throws IOException {
        Map<String, String> files = new TreeMap<>();
        if (!Files.exists(folder)) {
            return files;
        }
        try (Stream<Path> paths = Files.walk(folder)) {
            for (Path path : paths.filter(Files::isRegularFile)
                    .filter(path -> !path.endsWith(OutputList.NAME))
                    .toList()) {
                files.put(
                        folder.relativize(path).toString().replace('\\', '/'),
                        Files.readString(path, StandardCharsets.UTF_8));
            }
        }
        return files;
    }
}
