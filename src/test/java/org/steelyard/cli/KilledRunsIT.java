package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.cli.WritingJobs.Job;

/**
 * The real program, killed at drawn moments of its run. After each kill every file that stands under its final name is,
 * byte for byte, one of a finished run; unless complete files wait to be moved, all are of the same run; no input was
 * touched; and the next run writes all of it and leaves nothing beside it. The gate kills a few;
 * {@code -Dsteelyard.kills=200} as many as one likes, and prints what was met.
 */
class KilledRunsIT {

    private static final long SEED = 20261125;
    private static final int KILLS = Integer.getInteger("steelyard.kills", 2);
    private static final Path COMPLETE = Path.of(".writing", "complete");

    @TempDir
    private static Path folder;

    private final Random random = new Random(SEED);
    private final Map<String, Integer> met = new TreeMap<>();

    @Test
    void aKilledRunLeavesNothingHalfDoneAndTheNextOneIsWhole() throws Exception {
        Path in = folder.resolve("in");
        List<Job> jobs = WritingJobs.all(in, folder.resolve("out"));
        Map<String, String> inputs = Snapshot.seen(in);
        Map<String, String> shipped = shipped();
        Map<Job, Runs> known = new HashMap<>();
        for (int kill = 0; kill < KILLS; kill++) {
            Job job = kill % 2 == 0 ? jobs.get(0) : jobs.get(1 + kill / 2 % (jobs.size() - 1));
            if (!known.containsKey(job)) {
                known.put(job, Runs.of(job));
            }
            killed(job, known.get(job), kill);
            assertThat(Snapshot.seen(in)).as("inputs").isEqualTo(inputs);
        }
        assertThat(shipped()).as("configuration and demo").isEqualTo(shipped);
        System.out.println(KILLS + " kills, seed " + SEED + ": " + met);
    }

    private static Map<String, String> shipped() throws IOException {
        Map<String, String> all = new TreeMap<>(Snapshot.seen(Path.of("config")));
        all.putAll(Snapshot.seen(Path.of("data-in")));
        return all;
    }

    private void killed(Job job, Runs runs, int kill) throws Exception {
        int variant = random.nextInt(2);
        Map<String, String> before = Snapshot.seen(job.folder());
        Process process = start(job.variants().get(variant));
        long micros = (long) (random.nextDouble() * 1.1 * runs.micros());
        boolean aimed = random.nextInt(4) == 0;
        if (aimed) {
            untilMoving(job, process);
        } else {
            process.waitFor(micros, TimeUnit.MICROSECONDS);
        }
        boolean ended = !process.isAlive();
        process.destroyForcibly().waitFor();
        String said = job + ", kill " + kill + " after " + micros + " µs" + (aimed ? ", when moving" : "");
        met.merge(met(job, before, ended), 1, Integer::sum);
        check(job, runs, before, said);
        int next = random.nextInt(2);
        run(job.variants().get(next));
        assertThat(Snapshot.seen(job.folder())).as(said).isEqualTo(runs.written(next));
        assertThat(Snapshot.hidden(job.folder())).as(said).isEmpty();
    }

    /** Waits for the moment between the first and the last move, which hardly any drawn moment would meet. */
    private static void untilMoving(Job job, Process process) {
        while (process.isAlive() && !anyComplete(job.folder())) {
            Thread.onSpinWait();
        }
    }

    private static boolean anyComplete(Path folder) {
        return Files.exists(folder.resolve(COMPLETE))
                || Files.exists(folder.resolve("summer").resolve(COMPLETE))
                || Files.exists(folder.resolve("c").resolve(COMPLETE));
    }

    private static String met(Job job, Map<String, String> before, boolean ended) throws IOException {
        Map<String, String> hidden = Snapshot.hidden(job.folder());
        if (ended) {
            return "1 had ended";
        }
        boolean same = Snapshot.seen(job.folder()).equals(before);
        if (hidden.keySet().stream().anyMatch(name -> name.endsWith(".writing/complete"))) {
            return same ? "4 complete, nothing moved" : "5 some moved";
        }
        return !same ? "6 all moved" : hidden.isEmpty() ? "2 nothing written" : "3 in the middle of writing";
    }

    private static void check(Job job, Runs runs, Map<String, String> before, String said) throws IOException {
        Map<String, String> now = Snapshot.seen(job.folder());
        now.forEach((name, sum) -> assertThat(List.of(
                        runs.written(0).getOrDefault(name, ""), runs.written(1).getOrDefault(name, "")))
                .as(said + ": " + name)
                .contains(sum));
        if (!job.name().equals("against") && !waits(job)) {
            assertThat(List.of(before, runs.written(0), runs.written(1)))
                    .as(said)
                    .contains(now);
        }
    }

    private static boolean waits(Job job) throws IOException {
        return Snapshot.hidden(job.folder()).keySet().stream().anyMatch(name -> name.endsWith(".writing/complete"));
    }

    /** What each variant writes, undisturbed, and how long the real program takes for it. */
    private record Runs(List<Map<String, String>> written, long micros) {

        Map<String, String> written(int variant) {
            return written.get(variant);
        }

        static Runs of(Job job) throws Exception {
            List<Map<String, String>> written = new ArrayList<>();
            long start = System.nanoTime();
            Process process = start(job.variants().get(0));
            assertThat(process.waitFor(2, TimeUnit.MINUTES)).isTrue();
            assertThat(process.exitValue()).as(job.name()).isZero();
            long micros = (System.nanoTime() - start) / 1000;
            for (List<String> variant : job.variants()) {
                run(variant);
                written.add(Snapshot.seen(job.folder()));
            }
            assertThat(written.get(0)).as(job.name()).isNotEmpty();
            return new Runs(written, micros);
        }
    }

    private static void run(List<String> args) {
        StringWriter said = new StringWriter();
        int exitCode = Main.run(new PrintWriter(said, true), new PrintWriter(said, true), args.toArray(String[]::new));
        assertThat(exitCode).as(said.toString()).isZero();
    }

    private static Process start(List<String> args) throws IOException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-XX:+UseSerialGC",
                "-cp",
                System.getProperty("java.class.path"),
                Main.class.getName()));
        command.addAll(args);
        return new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said.txt").toFile())
                .start();
    }
}
