package org.steelyard.report.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.report.book.WatchedOutput;

class WholeFileTest {

    @TempDir
    private Path folder;

    private List<String> names() throws IOException {
        try (Stream<Path> paths = Files.list(folder)) {
            return paths.map(path -> path.getFileName().toString()).sorted().toList();
        }
    }

    private static void write(Path file, String text) throws IOException {
        WholeFile.write(file, out -> out.write(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void aFailureInTheMiddleLeavesTheOldFileAndNothingBesideIt() throws IOException {
        Path file = folder.resolve("a.html");
        write(file, "old");
        assertThatIOException()
                .isThrownBy(() -> WholeFile.write(file, out -> {
                    out.write(new byte[100_000]);
                    throw new IOException("No space left on device");
                }));
        assertThat(file).hasContent("old");
        assertThat(names()).containsExactly("a.html");
    }

    @Test
    void whatAKilledRunLeftIsRemovedAndWhatALiveOneWritesIsNot() throws IOException {
        Path file = folder.resolve("a.html");
        String dead = ".a.html.00000000-0000-0000-0000-000000000001";
        String live = ".a.html.00000000-0000-0000-0000-000000000002";
        for (String name :
                List.of(dead + ".lock", dead + ".part", live + ".part", ".a.html.mine.part", ".b.html.lock")) {
            Files.writeString(folder.resolve(name), "half");
        }
        try (WritingLock held = WritingLock.take(folder.resolve(live + ".lock")).orElseThrow()) {
            assertThat(held).isNotNull();
            write(file, "new");
            assertThat(names())
                    .containsExactly(
                            ".a.html.00000000-0000-0000-0000-000000000002.lock",
                            ".a.html.00000000-0000-0000-0000-000000000002.part",
                            ".a.html.mine.part",
                            ".b.html.lock",
                            "a.html");
        }
        assertThat(file).hasContent("new");
    }

    @Test
    void twoWritersOfOneFileEachWriteAWholeOne() throws IOException {
        Path file = folder.resolve("a.txt");
        WholeFile.write(file, out -> {
            out.write("outer, which ends last".getBytes(java.nio.charset.StandardCharsets.UTF_8));
            write(file, "inner");
            assertThat(file).hasContent("inner");
        });
        assertThat(file).hasContent("outer, which ends last");
        assertThat(names()).containsExactly("a.txt");
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void aLinkIsFollowedAndADeviceIsWrittenStraight() throws IOException {
        Path target = Files.writeString(folder.resolve("target.txt"), "old");
        Path link = Files.createSymbolicLink(folder.resolve("link.txt"), target);
        write(link, "new");
        assertThat(link).isSymbolicLink();
        assertThat(target).hasContent("new");
        write(Path.of("/dev/null"), "gone");
        assertThat(Files.isRegularFile(Path.of("/dev/null"))).isFalse();
    }

    @Test
    void aFullDiskUnderTheLibraryIsAFaultOfTheDiskAtEveryByte() throws IOException {
        try (XSSFWorkbook book = new XSSFWorkbook()) {
            book.createSheet("a").createRow(0).createCell(0).setCellValue("b");
            for (int room = 0; room < 3000; room += 150) {
                int bytes = room;
                try (WatchedOutput out = new WatchedOutput(new Full(bytes))) {
                    assertThatIOException()
                            .as(bytes + " bytes")
                            .isThrownBy(() -> out.write(book))
                            .withMessage("No space left on device");
                }
            }
        }
    }

    /** A disk with room for so many bytes. */
    private static final class Full extends OutputStream {

        private int room;

        private Full(int room) {
            this.room = room;
        }

        @Override
        public void write(int one) throws IOException {
            if (room == 0) {
                throw new IOException("No space left on device");
            }
            room--;
        }
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(new IOException("No space left on device"), "the disk is full; free some space there"),
                Arguments.of(
                        new FileSystemException("/r/a", null, "There is not enough space on the disk"),
                        "the disk is full; free some space there (/r/a)"),
                Arguments.of(
                        new IOException("Disk quota exceeded"),
                        "your quota on this disk is used up; free some" + " space there"),
                Arguments.of(
                        new IOException("File too large"),
                        "a file grew larger than this disk or your account may" + " have"),
                Arguments.of(new AccessDeniedException("/r"), "you may not write there (/r)"),
                Arguments.of(
                        new FileAlreadyExistsException("/r"),
                        "a file stands where a folder is needed; move it" + " away (/r)"),
                Arguments.of(
                        new FileSystemException("/r", null, "Read-only file system"), "the disk is read-only (/r)"),
                Arguments.of(
                        new FileSystemException("/r", null, "File name too long"),
                        "the name is too long for this disk; give a shorter one (/r)"),
                Arguments.of(new FileNotFoundException("/r (Permission denied)"), "you may not write there"),
                Arguments.of(new IOException(), "IO"),
                Arguments.of(new java.util.zip.ZipException("odd"), "Zip, odd"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void aFaultIsSaidInPlainWords(IOException fault, String plain) {
        assertThat(WriteFault.of(fault)).isEqualTo(plain);
    }

    @Test
    void namesFromDataArePlainAndNoTwoAreTheSame() {
        FileNames names = new FileNames();
        List<String> given = Stream.of("../../x", "x", "X", "\u00DC\u0131 a/b", "NUL", "", "\uFF1D", "y".repeat(300))
                .map(data -> names.unique("t-" + FileNames.plain(data), ".html"))
                .toList();
        assertThat(given)
                .containsExactly(
                        "t-x.html",
                        "t-x-2.html",
                        "t-x-3.html",
                        "t-u-a-b.html",
                        "t-nul.html",
                        "t-.html",
                        "t--2.html",
                        "t-" + "y".repeat(40) + ".html");
    }
}
