package org.steelyard.report.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class StagedFolderTest {

    private static final List<String> NAMES = List.of("a.csv", "b.xlsx", "pages/c.html");

    @TempDir
    private Path parent;

    private Path folder() {
        return parent.resolve("out");
    }

    private static void write(StagedFolder staged, String content) throws IOException {
        for (String name : NAMES) {
            Files.writeString(staged.file(name), content, StandardCharsets.UTF_8);
        }
    }

    private void run(String content) throws IOException {
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, content);
            staged.publish();
        }
    }

    private Map<String, String> all() throws IOException {
        Map<String, String> files = new TreeMap<>();
        try (Stream<Path> paths = Files.walk(parent)) {
            for (Path path : paths.filter(Files::isRegularFile)
                    .filter(file -> !file.endsWith(OutputList.NAME))
                    .toList()) {
                files.put(folder().relativize(path).toString(), Files.readString(path, StandardCharsets.UTF_8));
            }
        }
        return files;
    }

    private static Map<String, String> each(String content) {
        Map<String, String> files = new TreeMap<>();
        NAMES.forEach(name -> files.put(name, content));
        return files;
    }

    /** What a run that was killed leaves: complete files, the list of them, and so many of them moved. */
    private void killedAfter(int moves, String content) throws IOException {
        Path staging = Files.createDirectories(folder().resolve(StagedFolder.STAGING));
        Files.createDirectories(staging.resolve("pages"));
        Files.writeString(staging.resolve("lock"), "");
        Files.writeString(staging.resolve("waiting"), "scratch");
        new MoveList(NAMES, List.of("room.csv")).write(staging);
        for (int i = 0; i < NAMES.size(); i++) {
            Path to = i < moves ? folder() : staging;
            Files.createDirectories(to.resolve(NAMES.get(i)).getParent());
            Files.writeString(to.resolve(NAMES.get(i)), content, StandardCharsets.UTF_8);
        }
    }

    @Test
    void filesAppearTogetherAndNothingElseIsLeft() throws IOException {
        run("first");
        assertThat(all()).isEqualTo(each("first"));
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, "second");
            assertThat(folder().resolve("a.csv")).hasContent("first");
            staged.publish();
        }
        assertThat(all()).isEqualTo(each("second"));
    }

    @Test
    void theListNamesWhatStandsThereInOneOrderWhateverStoodThereBefore() throws IOException {
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            Files.writeString(staged.file("students/2-b.html"), "two");
            Files.writeString(staged.file("grades.csv"), "grades");
            staged.publish();
        }
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            Files.writeString(staged.file("students/1-a.html"), "one");
            Files.writeString(staged.file("grades.csv"), "grades");
            staged.publish(List.of("students/2-b.html"));
        }
        String after = Files.readString(folder().resolve(OutputList.NAME));
        assertThat(after).contains("students/1-a.html").doesNotContain("students/2-b.html");
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder().resolve("fresh")))) {
            Files.writeString(staged.file("students/1-a.html"), "one");
            Files.writeString(staged.file("grades.csv"), "grades");
            staged.publish();
        }
        assertThat(folder().resolve("fresh").resolve(OutputList.NAME)).hasContent(after);
    }

    @Test
    void afterAFailureAllIsAsItWasAndAFolderMadeForItIsGone() throws IOException {
        StagedFolder.at(Destination.of(folder())).close();
        assertThat(folder()).doesNotExist();
        run("first");
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            Files.writeString(staged.file("a.csv"), "half");
            Files.writeString(staged.scratch("waiting"), "half");
        }
        assertThat(all()).isEqualTo(each("first"));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 2, 3})
    void aRunKilledWhileItMovedIsFinishedByTheNextThatWritesOrReads(int moves) throws IOException {
        run("old");
        Files.writeString(folder().resolve("room.csv"), "old");
        killedAfter(moves, "new");
        StagedFolder.putRight(folder());
        assertThat(all()).isEqualTo(each("new"));

        killedAfter(moves, "newer");
        StagedFolder.at(Destination.of(folder())).close();
        assertThat(all()).isEqualTo(each("newer"));
    }

    @Test
    void aRunKilledBeforeItsFilesWereCompleteIsSweptAway() throws IOException {
        run("old");
        Path staging =
                Files.createDirectories(folder().resolve(StagedFolder.STAGING).resolve("pages"));
        Files.writeString(staging.resolve("c.html"), "half");
        Files.writeString(staging.resolveSibling("complete.part"), "move a.c");
        Files.writeString(staging.resolveSibling("lock"), "");
        StagedFolder.putRight(folder());
        assertThat(all()).hasSize(NAMES.size() + 3);
        run("new");
        assertThat(all()).isEqualTo(each("new"));
    }

    @Test
    void whatCannotBeMovedWaitsForTheNextRunWhichSaysSo() throws IOException {
        killedAfter(1, "new");
        Path blocked = Files.createDirectories(folder().resolve("b.xlsx").resolve("inside"));
        for (int i = 0; i < 2; i++) {
            assertThatIOException()
                    .isThrownBy(() -> StagedFolder.at(Destination.of(folder())))
                    .isInstanceOf(HalfMovedException.class)
                    .withMessageContaining("a folder stands where the file is to be; move it away")
                    .withMessageContaining("b.xlsx")
                    .withMessageContaining("the next run moves the others first");
        }
        Files.delete(blocked);
        Files.delete(blocked.getParent());
        StagedFolder.at(Destination.of(folder())).close();
        assertThat(all()).isEqualTo(each("new"));
    }

    @Test
    void aPlaceThatIsTakenIsSaidBeforeAnythingIsMoved() throws IOException {
        Files.createDirectories(folder().resolve("b.xlsx"));
        Files.writeString(folder().resolve("pages"), "a file");
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            Files.writeString(staged.file("a.csv"), "new");
            assertThatIOException().isThrownBy(() -> staged.file("b.xlsx")).withMessageContaining("a folder stands");
            assertThatIOException()
                    .isThrownBy(() -> staged.file("pages/c.html"))
                    .withMessageContaining("a file stands where a folder is needed");
        }
        assertThat(folder().resolve("a.csv")).doesNotExist();
    }

    @Test
    void aPlaceTakenWhileTheRunWentOnLeavesAllAsItWas() throws IOException {
        run("old");
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, "new");
            Files.delete(folder().resolve("b.xlsx"));
            Files.createDirectories(folder().resolve("b.xlsx"));
            assertThatIOException().isThrownBy(staged::publish).withMessageContaining("a folder stands");
        }
        assertThat(folder().resolve("a.csv")).hasContent("old");
        assertThat(folder().resolve(StagedFolder.STAGING)).doesNotExist();
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aReadOnlyFileIsNotReplacedWhoeverRunsIt() throws IOException {
        run("old");
        Files.setPosixFilePermissions(folder().resolve("b.xlsx"), PosixFilePermissions.fromString("r--r--r--"));
        assertThatIOException().isThrownBy(() -> run("new")).withMessageContaining("read-only");
        assertThat(all()).isEqualTo(each("old"));
    }

    @Test
    void onlyOneRunAtATimeWritesIntoAFolder() throws IOException {
        try (StagedFolder first = StagedFolder.at(Destination.of(folder()))) {
            write(first, "first");
            assertThatIOException()
                    .isThrownBy(() -> StagedFolder.at(Destination.of(folder())))
                    .withMessageContaining("another run is writing into it at this moment");
            first.publish();
        }
        assertThat(all()).isEqualTo(each("first"));
    }

    @Test
    void filesOfAnEarlierRunGoAndThoseOfOthersStay() throws IOException {
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, "old");
            Files.writeString(staged.file("room.csv"), "old");
            Files.writeString(staged.file("edited.csv"), "old");
            staged.publish();
        }
        Files.writeString(folder().resolve("mine.txt"), "mine");
        Files.writeString(folder().resolve("edited.csv"), "edited");
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, "new");
            staged.publish(List.of("a.csv", "room.csv", "edited.csv", "mine.txt", "never.csv"));
        }
        Map<String, String> expected = each("new");
        expected.put("edited.csv", "edited");
        expected.put("mine.txt", "mine");
        assertThat(all()).isEqualTo(expected);
    }

    @ParameterizedTest
    @ValueSource(strings = {"../x", "/x", "a/../../x", "a/b/c", "", " ", "..", "a\nmove b", "./x"})
    void aNameThatLeadsOutIsRefused(String name) throws IOException {
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            assertThatIllegalArgumentException().isThrownBy(() -> staged.file(name));
        }
        assertThat(all()).isEmpty();
    }

    @Test
    void aListThatLeadsOutIsNotFollowed() throws IOException {
        killedAfter(0, "new");
        Path list = folder().resolve(StagedFolder.STAGING).resolve("complete");
        Files.writeString(list, "move a.csv\nremove ../precious.txt\n");
        Files.writeString(parent.resolve("precious.txt"), "mine");
        assertThatIOException()
                .isThrownBy(() -> StagedFolder.putRight(folder()))
                .withMessageContaining("was not written by this program");
        assertThat(parent.resolve("precious.txt")).hasContent("mine");
    }

    /** Where no link of a folder that somebody sent may lead. */
    private Path outside() throws IOException {
        Path outside = Files.createDirectories(parent.resolve("outside"));
        for (String name : List.of("1.html", "lock", "complete")) {
            Files.writeString(outside.resolve(name), "mine");
        }
        return outside;
    }

    private void assertUntouched(Path outside) throws IOException {
        try (Stream<Path> paths = Files.list(outside)) {
            assertThat(paths.sorted().toList())
                    .hasSize(3)
                    .allSatisfy(path -> assertThat(path).hasContent("mine"));
        }
    }

    private Map<String, String> visible() throws IOException {
        Map<String, String> files = all();
        files.keySet().removeIf(name -> name.startsWith("..") || name.startsWith("set-aside"));
        return files;
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void theHiddenFolderIsNeverALink() throws IOException {
        Path outside = outside();
        Files.createDirectories(folder());
        Files.createSymbolicLink(folder().resolve(StagedFolder.STAGING), outside);
        StagedFolder.putRight(folder());
        run("new");
        assertThat(visible()).isEqualTo(each("new"));
        assertUntouched(outside);
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    @DisabledOnOs(OS.WINDOWS)
    void theLockIsNeverAFileOfElsewhere(boolean symbolic) throws IOException {
        Path outside = outside();
        Path lock =
                Files.createDirectories(folder().resolve(StagedFolder.STAGING)).resolve("lock");
        if (symbolic) {
            Files.createSymbolicLink(lock, outside.resolve("lock"));
        } else {
            Files.createLink(lock, outside.resolve("lock"));
        }
        run("new");
        assertThat(visible()).isEqualTo(each("new"));
        assertUntouched(outside);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "move students/1.html",
                "remove students/1.html",
                "move ../outside/1.html",
                "move complete",
                "move lock.html\nremove mine.txt",
                "move .writing/lock.html",
                "delete a.csv",
                ""
            })
    @DisabledOnOs(OS.WINDOWS)
    void aListOfSomebodyElseIsSaidOnceAndSetAside(String lines) throws IOException {
        for (String list :
                List.of(lines, "complete files of a run, by Steelyard\n" + lines + "\nend\n", "move a.csv\n" + lines)) {
            Path outside = outside();
            Path staging = Files.createDirectories(folder().resolve(StagedFolder.STAGING));
            Files.writeString(staging.resolve("complete"), list);
            Files.writeString(staging.resolve("a.csv"), "theirs");
            Files.writeString(folder().resolve("mine.txt"), "mine");
            Files.deleteIfExists(folder().resolve("students"));
            Files.createSymbolicLink(folder().resolve("students"), outside);
            Files.createSymbolicLink(staging.resolve("students"), outside);
            assertThatIOException()
                    .isThrownBy(() -> StagedFolder.putRight(folder()))
                    .withMessageContaining("was not written by this program: ")
                    .withMessageContaining("nothing was moved or removed")
                    .withMessageContaining("set-aside");
            StagedFolder.putRight(folder());
            run("new");
            Map<String, String> expected = each("new");
            expected.put("mine.txt", "mine");
            assertThat(visible()).as(list).isEqualTo(expected);
            assertUntouched(outside);
        }
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aSubFolderThatIsALinkIsRefusedBeforeAnythingIsWritten() throws IOException {
        Path outside = outside();
        Files.createDirectories(folder());
        Files.createSymbolicLink(folder().resolve("students"), outside);
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            assertThatIOException()
                    .isThrownBy(() -> staged.file("students/1.html"))
                    .withMessageContaining("a link stands where a folder is needed; move it away");
        }
        assertUntouched(outside);
    }

    @Test
    void aRunWhoseLockWasRemovedMovesNothing() throws IOException {
        run("old");
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, "new");
            Files.delete(folder().resolve(StagedFolder.STAGING).resolve("lock"));
            assertThatIOException().isThrownBy(staged::publish).withMessageContaining("its lock was removed meanwhile");
        }
        assertThat(all()).isEqualTo(each("old"));
    }

    @Test
    void aForeignFileAmongPartsOfAnEarlierRunIsSaidBeforeAnythingIsMoved() throws IOException {
        for (String name : List.of("part-0.parquet", "notes.txt")) {
            inParts();
            Files.writeString(folder().resolve("flights.parquet").resolve(name), "theirs");
            Map<String, String> before = all();
            try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
                write(staged, "new");
                assertThatIOException()
                        .isThrownBy(() -> staged.publish(List.of("flights.parquet", "skipped")))
                        .withMessageContaining("move the folder away")
                        .withMessageContaining("this program did not write the file there");
            }
            assertThat(all()).isEqualTo(before).hasSize(name.equals("notes.txt") ? 5 : 4);
        }
    }

    /** What a run on many machines leaves. */
    private void inParts() throws IOException {
        Path parts = Files.createDirectories(folder().resolve("flights.parquet"));
        Files.writeString(parts.resolve("part-0.parquet"), "first");
        Files.writeString(parts.resolve("part-1.parquet"), "second");
        Files.writeString(Files.createDirectories(folder().resolve("skipped")).resolve("part-0.csv"), "rows");
        List<String> outputs = new ArrayList<>();
        for (String name :
                List.of("flights.parquet/part-0.parquet", "flights.parquet/part-1.parquet", "skipped/part-0.csv")) {
            FileSum sum = FileSum.of(folder().resolve(name));
            outputs.add("{\"file\": \"" + name + "\", \"bytes\": " + sum.bytes() + ", \"sha256\": \"" + sum.sha256()
                    + "\"}");
        }
        Files.writeString(
                folder().resolve("run.json"),
                "{\"program\": \"Steelyard\", \"outputs\": [" + String.join(",", outputs) + "]}");
    }

    @Test
    void partsOfAnEarlierRunGoWithTheirFolder() throws IOException {
        inParts();
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            write(staged, "new");
            staged.publish(List.of("flights.parquet", "skipped", "rejected"));
        }
        assertThat(folder().resolve("flights.parquet")).doesNotExist();
        assertThat(folder().resolve("skipped")).doesNotExist();
        assertThat(all()).containsAllEntriesOf(each("new"));
    }

    @Test
    void twoFilesWhoseNamesDifferInCaseOnlyAreRefused() throws IOException {
        try (StagedFolder staged = StagedFolder.at(Destination.of(folder()))) {
            staged.file("A.csv");
            assertThatIllegalArgumentException().isThrownBy(() -> staged.file("a.csv"));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"CON", "nul", "com1.csv", "Aux.old"})
    void aNameOfADeviceIsNoFolder(String name) {
        assertThatIllegalArgumentException().isThrownBy(() -> StagedFolder.in(Destination.of(parent), name));
    }
}
