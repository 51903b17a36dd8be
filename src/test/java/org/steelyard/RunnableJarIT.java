package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;

/** The jar finds its main class and the libraries beside it. */
class RunnableJarIT {

    @Test
    void jarStartedAloneTellsItsVersion() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command("--version"))
                .redirectErrorStream(true)
                .start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        assertThat(output).isEqualToNormalizingNewlines("Steelyard " + System.getProperty("steelyard.version") + "\n");
        assertThat(process.exitValue()).isZero();
    }

    /** In the locale, the zone and under the coverage agent of this process, as the build set them. */
    private static List<String> command(String... args) {
        List<String> command = new ArrayList<>();
        command.add(Path.of(System.getProperty("java.home"), "bin", "java").toString());
        ManagementFactory.getRuntimeMXBean().getInputArguments().stream()
                .filter(arg -> arg.startsWith("-javaagent:") || arg.startsWith("-Duser."))
                .forEach(command::add);
        command.add("-jar");
        command.add(System.getProperty("steelyard.jar"));
        command.addAll(List.of(args));
        return command;
    }
}
