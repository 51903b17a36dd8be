package org.steelyard.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.MemoryMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.run.Progress;
import org.steelyard.run.SeasonRequest;
import org.steelyard.run.SeasonRun;

/**
 * Seasons one after the other in one process, through the library's own entry point: {@code Soak CONFIG FOLDER SEASONS
 * FLIGHTS}. Prints after each, and before the first, what is left: heap after a collection, open files, threads, files
 * in the folder for temporary ones and in that of the reports. All of it stays flat, or something leaks.
 */
final class Soak {

    private static final Progress SILENT = new Progress() {};
    private static final MemoryMXBean MEMORY = ManagementFactory.getMemoryMXBean();

    private final Configuration configuration;
    private final Flights flights;
    private final Path folder;

    private Soak(Configuration configuration, Path folder) {
        this.configuration = configuration;
        this.flights = new Flights(configuration);
        this.folder = folder;
    }

    public static void main(String[] args) throws Exception {
        Soak soak = new Soak(Setup.of(Path.of(args[0])).configuration(), Path.of(args[1]));
        int seasons = Integer.parseInt(args[2]);
        int flights = Integer.parseInt(args[3]);
        System.out.println("| season | flights | breached | elapsed, s | heap after collection, MB | open files | threads"
                + " | temporary files | hidden folders |");
        System.out.println("|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        Files.createDirectories(soak.folder);
        soak.left(0, 0, 0, 0);
        for (int season = 1; season <= seasons; season++) {
            soak.season(season, flights);
        }
    }

    private void season(int season, int count) throws Exception {
        Path file = Files.createDirectories(folder.resolve("in")).resolve("season-soak.csv");
        try (BufferedWriter out = Files.newBufferedWriter(file)) {
            out.write(String.join(",", Flights.HEADINGS) + "\n");
            for (int i = 0; i < count; i++) {
                out.write(String.join(",", flights.flight((season - 1) * count + i).cells()) + "\n");
            }
        }
        long start = System.nanoTime();
        StatusCount all = audit(file);
        left(season, all.flights(), all.breached(), (System.nanoTime() - start) / 1_000_000_000);
    }

    private StatusCount audit(Path file) throws Exception {
        return SeasonRun.audit(
                        new SeasonRequest(file, "soak", configuration, ReadOptions.of(configuration.maps()), folder.resolve("reports"), Runtime.getRuntime().availableProcessors(), "soak", List.of(), List.of(), false, false),
                        SILENT)
                .summary()
                .all();
    }

    private void left(int season, long count, long breached, long seconds) throws IOException {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        System.out.println(String.format(
                Locale.ROOT,
                "| %d | %d | %d | %d | %.1f | %d | %d | %d | %d |",
                season,
                count,
                breached,
                seconds,
                MEMORY.getHeapMemoryUsage().getUsed() / 1e6,
                files(Path.of("/proc/self/fd")),
                ManagementFactory.getThreadMXBean().getThreadCount(),
                files(Path.of(System.getProperty("java.io.tmpdir"))),
                hidden()));
    }

    private static long files(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return -1; // a system that does not show them
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.count();
        }
    }

    private long hidden() throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.getFileName().toString().startsWith(".")).count();
        }
    }
}
