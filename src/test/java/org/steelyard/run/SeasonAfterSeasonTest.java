package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.util.DefaultTempFileCreationStrategy;
import org.apache.poi.util.TempFile;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Seasons one after the other in one process leave nothing behind; the long run is {@code bench.Soak}. */
class SeasonAfterSeasonTest {

    @TempDir
    private Path folder;

    private static Set<String> openFiles(Path folder) throws IOException {
        Set<String> open = new TreeSet<>();
        try (Stream<Path> all = Files.list(Path.of("/proc/self/fd"))) {
            for (Path path : all.toList()) {
                if (Files.isSymbolicLink(path)) {
                    open.add(Files.readSymbolicLink(path).toString());
                }
            }
        }
        open.removeIf(name -> !name.startsWith(folder.toString()));
        return open;
    }

    private static Set<String> threads() {
        return Thread.getAllStackTraces().keySet().stream()
                .map(Thread::getName)
                .filter(name -> name.startsWith("pool-") || name.startsWith("steelyard"))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** What lies in the folder of the workbooks' library, which is this test's own while it runs. */
    private static List<Path> temporary(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile).toList();
        }
    }

    @AfterEach
    void giveTheLibraryItsFolderBack() {
        TempFile.setTempFileCreationStrategy(new DefaultTempFileCreationStrategy());
    }

    private static Set<String> hidden(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(path -> path.getFileName().toString().startsWith("."))
                    .map(Path::toString)
                    .collect(Collectors.toCollection(TreeSet::new));
        }
    }

    @Test
    void filesAreClosedThreadsEndedAndTemporaryFilesGoneAlsoAfterARunThatFailed() throws Exception {
        assumeTrue(Files.isDirectory(Path.of("/proc/self/fd")), "this system does not show its open files");
        Set<String> threads = threads();
        Path temporary = Files.createDirectory(folder.resolve("temporary"));
        TempFile.setTempFileCreationStrategy(new DefaultTempFileCreationStrategy(temporary.toFile()));
        Season season = new Season(folder).with("season-1.csv", Season.house(300));
        Files.copy(Path.of("data-in/demo/ledger-2026-08.xlsx"), season.input().resolve("ledger-2026-08.xlsx"));
        season.with("season-2.csv", StandardCharsets.UTF_8, List.of("no", "headings"));
        for (int i = 0; i < 3; i++) {
            assertThat(season.audit().accepted()).isGreaterThan(800);
            assertThat(openFiles(folder)).isEmpty();
        }
        Files.delete(season.report("season.xlsx"));
        Files.createDirectory(season.report("season.xlsx"));
        org.assertj.core.api.Assertions.assertThatIOException().isThrownBy(season::audit);
        assertThat(openFiles(folder)).isEmpty();
        assertThat(hidden(folder)).isEmpty();
        assertThat(temporary(temporary)).isEmpty();
        for (int tries = 0; tries < 100 && !threads().equals(threads); tries++) {
            Thread.sleep(50); // workers were told to end and do so in their own time
        }
        assertThat(threads()).isEqualTo(threads);
    }
}
