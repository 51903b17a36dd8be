package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.Test;

/**
 * The build makes the jar twice, the second time from copies of the classes with other file times in another folder.
 * The paths and the time stamp come from the build.
 */
class ReproducibleJarIT {

    private final Path jar = Path.of(System.getProperty("steelyard.jar"));
    private final Path again = Path.of(System.getProperty("steelyard.jarAgain"));
    private final LocalDateTime stampUtc =
            LocalDateTime.ofInstant(Instant.parse(System.getProperty("steelyard.stamp")), ZoneOffset.UTC);

    @Test
    void jarMadeTwiceHasTheSameBytes() throws IOException {
        assertThat(Files.isSameFile(jar, again)).isFalse();
        assertThat(Files.mismatch(jar, again))
                .as("first differing byte of %s and %s", jar, again)
                .isEqualTo(-1);
    }

    @Test
    void everyEntryCarriesTheStampOfTheProject() throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            assertThat(zip.stream())
                    .isNotEmpty()
                    .allSatisfy(entry ->
                            assertThat(entry.getTimeLocal()).as(entry.getName()).isEqualTo(stampUtc));
        }
    }

    @Test
    void entriesAreSortedByName() throws IOException {
        try (ZipFile zip = new ZipFile(jar.toFile())) {
            assertThat(zip.stream().map(ZipEntry::getName).filter(name -> name.endsWith(".class")))
                    .isNotEmpty()
                    .isSorted();
        }
    }
}
