package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.hostile.HostileFiles;

/** Places in the folder of a season where no file is to be had: the program says why and finishes the rest. */
class HostilePlacesTest {

    @TempDir
    private Path folder;

    private Path season;

    /** Links by name and target, and what is said of the first, in a season and alone. */
    private record Links(String name, List<List<String>> links, String why) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Links> links() {
        return Stream.of(
                new Links("to itself", List.of(List.of("a.csv", "a.csv")), "the link leads in circles"),
                new Links(
                        "to each other",
                        List.of(List.of("a.csv", "b.csv"), List.of("b.csv", "./c.csv"), List.of("c.csv", "a.csv")),
                        "the link leads in circles"),
                new Links(
                        "into a circle",
                        List.of(List.of("a.csv", "b.csv"), List.of("b.csv", "b.csv")),
                        "the link leads in circles"),
                new Links("to nothing", List.of(List.of("a.csv", "gone.csv")), "the link leads to nothing"),
                new Links(
                        "to a link to nothing",
                        List.of(List.of("a.xlsx", "b.xlsx"), List.of("b.xlsx", "nowhere/gone.xlsx")),
                        "the link leads to nothing"));
    }

    @BeforeEach
    void putAFileThatIsInOrder() throws IOException {
        season = Files.createDirectory(folder.resolve("season"));
        Files.writeString(season.resolve("z.csv"), HostileFiles.good("T1"), StandardCharsets.UTF_8);
    }

    private record Said(int exitCode, String words) {}

    private Said audit(Path input) {
        StringWriter lines = new StringWriter();
        PrintWriter writer = new PrintWriter(lines, true);
        String reports = folder.resolve("reports").toString();
        int exitCode = Main.run(writer, writer, "audit", input.toString(), "--threads", "1", "--reports", reports);
        return new Said(exitCode, lines.toString());
    }

    private void requireTheRestFinished(String said) throws IOException {
        Said audited = audit(season);
        assertThat(audited.exitCode()).isEqualTo(ExitCode.FINISHED);
        assertThat(audited.words()).doesNotContain("Exception");
        Path reports = folder.resolve("reports/season");
        assertThat(audited.words() + Files.readString(reports.resolve("run.json"), StandardCharsets.UTF_8))
                .contains(said);
        assertThat(Files.readString(reports.resolve("flights.csv"), StandardCharsets.UTF_8))
                .contains("z.csv,2,T1");
    }

    private static void link(Path link, Path target) {
        try {
            Files.createSymbolicLink(link, target);
        } catch (IOException | UnsupportedOperationException e) {
            assumeTrue(false, "SKIPPED: this system makes no symbolic links: " + e);
        }
    }

    @ParameterizedTest
    @MethodSource("links")
    void aLinkWithoutAFileBehindItIsNamedWithItsReason(Links links) throws IOException {
        for (List<String> one : links.links()) {
            link(season.resolve(one.get(0)), Path.of(one.get(1)));
        }
        String name = links.links().get(0).get(0);
        requireTheRestFinished(name + ": the file cannot be read: " + links.why() + " (expected a file that may be");
        Said alone = audit(season.resolve(name));
        assertThat(alone.exitCode()).isEqualTo(ExitCode.CANNOT);
        assertThat(alone.words()).contains(name + ": " + links.why() + " (value '");
    }

    @Test
    void aPipeThatNobodyWritesToIsNotWaitedFor() throws Exception {
        Path pipe = season.resolve("pipe.csv");
        int made;
        try {
            made = new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor();
        } catch (IOException e) {
            made = -1;
        }
        assumeTrue(made == 0, "SKIPPED: this system makes no pipes with a name");
        requireTheRestFinished("a pipe or a device, not a file");
        Said alone = audit(pipe);
        assertThat(alone.exitCode()).isEqualTo(ExitCode.CANNOT);
        assertThat(alone.words()).contains("pipe.csv: a pipe or a device, not a file");
    }

    @Test
    void aFileThatMayNotBeReadIsNamedWithItsReason() throws IOException {
        Path closed = season.resolve("a.csv");
        Files.writeString(closed, HostileFiles.good("T2"), StandardCharsets.UTF_8);
        closeFor(closed);
        assumeFalse(
                Files.isReadable(closed),
                "SKIPPED: the user of this run may read every file, as root may; UnreadableTest has the words");
        requireTheRestFinished(
                "a.csv: the file cannot be read: you may not read it (expected a file that may be read)");
    }

    private static void closeFor(Path file) throws IOException {
        try {
            Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        } catch (UnsupportedOperationException | FileSystemException e) {
            assumeTrue(false, "SKIPPED: this system has no such permissions: " + e);
        }
    }
}
