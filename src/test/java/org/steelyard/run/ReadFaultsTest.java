package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.InputProblem;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.samples.Plain;

/** A file that cannot be read, or not to its end, is named; the rest of the season is audited. */
class ReadFaultsTest {

    @TempDir
    private Path folder;

    private SeasonOutcome audit(Path season, Progress progress) throws Exception {
        Configuration configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        return SeasonRun.audit(
                Plain.seasonRequest(
                        season,
                        "season",
                        configuration,
                        ReadOptions.of(configuration.maps()),
                        folder.resolve("reports"),
                        1,
                        "0",
                        List.of()),
                progress);
    }

    private static List<String> messages(SeasonOutcome outcome) {
        return outcome.fileProblems().stream().map(InputProblem::message).toList();
    }

    @Test
    void aFileRemovedWhileOthersAreReadIsNamed() throws Exception {
        Season season = new Season(folder).with("season-b.csv", Season.house(20));
        List<String> house = Season.house(400);
        List<String> many = new ArrayList<>(house);
        for (int i = 0; i < 14; i++) {
            int year = 2030 + i;
            house.subList(1, house.size()).forEach(row -> many.add(row.replaceFirst(",2026-", "," + year + "-")));
        }
        season.with("season-a.csv", many);
        SeasonOutcome outcome = audit(season.input(), new Progress() {
            @Override
            public void file(String name, int number, int files) {
                if (number == 1) {
                    delete(season.input().resolve("season-b.csv"));
                }
            }
        });
        assertThat(messages(outcome))
                .containsExactly("season-b.csv: the file cannot be read: it was removed meanwhile (expected a file that"
                        + " may be read)");
        assertThat(outcome.facts().accepted()).isGreaterThan(5000);
        assertThat(season.report("run.json")).content(StandardCharsets.UTF_8).contains("removed meanwhile");
    }

    private static void delete(Path file) {
        try {
            Files.delete(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    /** A place that answers every read with an error, as a failing disk does. */
    @Test
    void aFileWhoseDiskFailsIsNamed() throws Exception {
        Path failing = Path.of("/proc/self/mem");
        assumeTrue(Files.exists(failing), "this system has no file that fails to be read");
        Season season = new Season(folder).with("season-b.csv", Season.house(20));
        Files.createSymbolicLink(season.input().resolve("season-a.csv"), failing);
        SeasonOutcome outcome = audit(season.input(), new Progress() {});
        assertThat(messages(outcome)).singleElement().asString().startsWith("season-a.csv: the file cannot be read");
        assertThat(outcome.facts().accepted()).isEqualTo(19);
    }

    /** Reading breaks off in the middle: the archive that holds the file is damaged there. */
    @Test
    void aFileThatBreaksOffInTheMiddleIsNamed() throws Exception {
        Path archive = folder.resolve("season.zip");
        try (FileSystem zip = FileSystems.newFileSystem(archive, Map.of("create", "true"))) {
            Files.createDirectory(zip.getPath("season"));
            Files.write(zip.getPath("season", "season-a.csv"), Season.house(400), StandardCharsets.UTF_8);
            Files.write(zip.getPath("season", "season-b.csv"), Season.house(20), StandardCharsets.UTF_8);
        }
        byte[] bytes = Files.readAllBytes(archive);
        for (int i = 5000; i < 5600; i++) {
            bytes[i] = 0;
        }
        Files.write(archive, bytes);
        try (FileSystem zip = FileSystems.newFileSystem(archive)) {
            SeasonOutcome outcome = audit(zip.getPath("season"), new Progress() {});
            assertThat(messages(outcome)).isNotEmpty().allMatch(message -> message.startsWith("season-a.csv"));
            assertThat(outcome.facts().accepted()).isGreaterThanOrEqualTo(19);
        }
        assertThat(Files.readAllBytes(archive)).isEqualTo(bytes);
    }
}
