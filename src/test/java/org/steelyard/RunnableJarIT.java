package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.lang.management.ManagementFactory;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

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

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void launcherAnswersAsTheJarDoes() throws IOException, InterruptedException {
        String[] flight = {"set", "--type", "jet180", "-f", "5", "-g", "24.5%", "--ascii"};
        List<String> launched = new ArrayList<>(List.of(flight));
        launched.add(0, launcher());

        String answer = output(launched);

        assertThat(answer).contains("Take-off trim to set: 0.8 UP").isEqualTo(output(command(flight)));
    }

    @Test
    @DisabledOnOs(OS.WINDOWS)
    void launcherTakesTheThoroughCompilerForLargeSeasonsOnly(@TempDir Path folder)
            throws IOException, InterruptedException {
        Path java = Files.createDirectories(folder.resolve("home/bin")).resolve("java");
        Files.writeString(java, "#!/bin/sh\necho \"$@\"\n");
        Files.setPosixFilePermissions(java, PosixFilePermissions.fromString("rwx------"));
        Path season = Files.createDirectories(folder.resolve("a season"));
        Files.writeString(season.resolve("flights.csv"), "flight\n");

        String small = launch(folder.resolve("home"), "audit", season.toString());
        try (RandomAccessFile file =
                new RandomAccessFile(season.resolve("more.csv").toFile(), "rw")) {
            file.setLength(40_000_000);
        }
        String large = launch(folder.resolve("home"), "audit", season.toString());

        assertThat(small)
                .contains("-XX:TieredStopAtLevel=1", "-XX:+UseParallelGC")
                .endsWith("audit " + season + "\n");
        assertThat(large).contains("-XX:+UseParallelGC").doesNotContain("-XX:TieredStopAtLevel=1");
        assertThat(launch(folder.resolve("home"), "set", "--tail", "QI-JAA"))
                .contains("-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC");
    }

    private static String launcher() {
        return System.getProperty("steelyard.jar").replaceFirst("\\.jar$", "");
    }

    private static String launch(Path javaHome, String... args) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(args));
        command.add(0, launcher());
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.environment().put("JAVA_HOME", javaHome.toString());
        return output(builder);
    }

    @Test
    void classDataArchiveFitsTheJar() throws IOException, InterruptedException {
        List<String> command = command("--version");
        command.removeIf(arg -> arg.startsWith("-javaagent:"));
        String archive = System.getProperty("steelyard.jar").replaceFirst("jar$", "jsa");
        command.addAll(1, List.of("-Xshare:on", "-XX:SharedArchiveFile=" + archive, "-Xlog:class+load"));

        assertThat(output(command)).contains("org.steelyard.cli.Main source: shared objects file");
    }

    private static String output(List<String> command) throws IOException, InterruptedException {
        return output(new ProcessBuilder(command));
    }

    private static String output(ProcessBuilder builder) throws IOException, InterruptedException {
        Process process = builder.redirectErrorStream(true).start();
        String output = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor(1, TimeUnit.MINUTES)).isTrue();
        return output;
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
