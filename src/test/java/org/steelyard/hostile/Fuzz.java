package org.steelyard.hostile;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;

/**
 * Runs a target on inputs drawn from seeds that follow each other. System properties: {@code steelyard.fuzz.seed} the
 * first seed, {@code steelyard.fuzz.NAME} how many executions (a sample if it is not set),
 * {@code steelyard.fuzz.slowMs} from which time of the processor on an execution is a finding (never if it is not set).
 * A finding names its seed and the file that holds its input; {@code -Dsteelyard.fuzz.seed=… -Dsteelyard.fuzz.NAME=1}
 * runs it alone.
 */
public final class Fuzz {

    private static final Path SAVED = Path.of("target", "fuzz");
    private static final int MOST_FINDINGS = 25;
    private static final long SPOKEN_EVERY_NANOS = 60_000_000_000L;

    private final String name;
    private final Target target;
    private final long slowNanos = Long.getLong("steelyard.fuzz.slowMs", 0) * 1_000_000;
    private final Map<String, String> findings = new LinkedHashMap<>();

    /** What is fuzzed. */
    public interface Target {

        /** Draws an input; the same draws give the same input. */
        byte[] input(SplittableRandom random);

        /**
         * Gives it to the program.
         *
         * @throws Exception if the program does not stand it, or an assertion does not hold
         */
        void run(byte[] input) throws Exception;
    }

    private Fuzz(String name, Target target) {
        this.name = name;
        this.target = target;
    }

    /**
     * Runs a target and fails with its findings, if there are any.
     *
     * @param name name of the target
     * @param sample how many executions, where the property does not say
     * @param target the target
     */
    public static void run(String name, long sample, Target target) {
        long first = Long.getLong("steelyard.fuzz.seed", 20261125);
        long count = Long.getLong("steelyard.fuzz." + name, sample);
        Fuzz fuzz = new Fuzz(name, target);
        fuzz.runAll(first, count, count > sample);
        assertThat(fuzz.findings.values()).as("findings of " + name).isEmpty();
    }

    private void runAll(long first, long count, boolean aloud) {
        long begin = System.nanoTime();
        long spoken = begin;
        for (long i = 0; i < count && findings.size() < MOST_FINDINGS; i++) {
            runOne(first + i);
            if (aloud && System.nanoTime() - spoken > SPOKEN_EVERY_NANOS) {
                spoken = System.nanoTime();
                speak(i + 1, spoken - begin);
            }
        }
        if (aloud) {
            speak(count, System.nanoTime() - begin);
        }
    }

    private void speak(long executions, long nanos) {
        System.out.println("fuzz " + name + ": " + executions + " executions, " + findings.size() + " findings, "
                + nanos / 1_000_000_000 + " s");
    }

    private void runOne(long seed) {
        byte[] input = target.input(new SplittableRandom(seed));
        long begin = System.nanoTime();
        Optional<Throwable> thrown = thrown(input);
        long nanos = System.nanoTime() - begin;
        thrown.ifPresent(cause -> note(seed, input, cause));
        if (slowNanos > 0 && nanos > slowNanos && thrown.isEmpty()) {
            requireFast(seed, input);
        }
    }

    /** Once more, by the processor's time: others use the machine, too. */
    private void requireFast(long seed, byte[] input) {
        long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        thrown(input);
        long nanos = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin;
        if (nanos > slowNanos) {
            note(seed, input, new AssertionError("it takes " + nanos / 1_000_000 + " ms"));
        }
    }

    private Optional<Throwable> thrown(byte[] input) {
        try {
            target.run(input);
            return Optional.empty();
        } catch (Throwable e) {
            return Optional.of(e);
        }
    }

    private void note(long seed, byte[] input, Throwable cause) {
        String where = "";
        for (StackTraceElement frame : cause.getStackTrace()) {
            boolean ours = frame.getClassName().startsWith("org.steelyard")
                    && !frame.getClassName().startsWith("org.steelyard.hostile");
            if (ours && where.isEmpty()) {
                where = " at " + frame;
            }
        }
        String kind = cause.getClass().getName() + (where.isEmpty() ? ": " + cause.getMessage() : where);
        if (findings.containsKey(kind)) {
            return;
        }
        Path saved = SAVED.resolve(name + "-" + seed + ".bin");
        try {
            Files.createDirectories(SAVED);
            Files.write(saved, input);
        } catch (IOException e) {
            cause.addSuppressed(e);
        }
        findings.put(kind, "seed " + seed + " (" + saved + "): " + cause + where);
        System.out.println("fuzz " + name + ": " + findings.get(kind));
    }
}
