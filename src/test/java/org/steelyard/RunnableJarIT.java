package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The jar finds its main class and the libraries beside it. */
class RunnableJarIT {

    @Test
    void jarStartedAloneTellsItsVersion() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-jar",
                        System.getProperty("steelyard.jar"),
                        "--version")
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(output).isEqualToNormalizingNewlines("Steelyard " + System.getProperty("steelyard.version") + "\n");
        assertThat(process.exitValue()).isZero();
    }
}
