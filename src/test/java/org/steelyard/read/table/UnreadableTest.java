package org.steelyard.read.table;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

class UnreadableTest {

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(new AccessDeniedException("s.csv"), "you may not read it"),
                Arguments.of(new NoSuchFileException("s.csv"), "it was removed meanwhile"),
                Arguments.of(new IOException("the disk is bad"), "IOException, the disk is bad"),
                Arguments.of(
                        new FileSystemException("s.csv", null, "too many open files"),
                        "FileSystemException, s.csv: too many open files"),
                Arguments.of(new IOException(), "IOException"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void aFaultOfReadingIsPutInPlainWords(IOException fault, String words) {
        assertThat(Unreadable.why(Path.of("no-such-file.csv"), fault)).isEqualTo(words);
    }
}
