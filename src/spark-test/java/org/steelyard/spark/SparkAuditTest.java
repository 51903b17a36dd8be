package org.steelyard.spark;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The command as its users run it: in a process of its own wherever Spark starts. */
class SparkAuditTest {

    private static final String[] NONE = {};
    private static final String[] SUBMITTED = {"-Dspark.submit.deployMode=client"};

    @TempDir
    private Path folder;

    private Path season;

    @BeforeEach
    void season() throws IOException {
        season = Files.createDirectories(folder.resolve("in/summer"));
        List<String> lines = Files.readAllLines(OneSpark.DEMO.resolve("season-2026-04.csv"), StandardCharsets.UTF_8);
        Files.write(season.resolve("flights.csv"), lines.subList(0, 30), StandardCharsets.UTF_8);
    }

    /** What a run told and how it ended. */
    private record Run(int exitCode, String out, String err) {}

    /** With Spark's log, as the profile runs it, and not with the silent one that ships. */
    private Process start(String[] settings, String... args) throws IOException {
        List<String> command = new ArrayList<>(
                List.of(Path.of(System.getProperty("java.home"), "bin", "java").toString(), "-Xmx1g"));
        command.addAll(List.of(settings));
        command.addAll(List.of(
                "-cp", classPathWithout("slf4j-nop"), SparkAudit.class.getName(), season.toString(), "-o"));
        command.add(folder.resolve("out").toString());
        command.addAll(List.of(args));
        return new ProcessBuilder(command)
                .redirectOutput(folder.resolve("stdout").toFile())
                .redirectError(folder.resolve("stderr").toFile())
                .start();
    }

    private static String classPathWithout(String jars) {
        Pattern left = Pattern.compile(jars);
        return Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))
                .filter(entry -> !left.matcher(entry).find())
                .collect(Collectors.joining(File.pathSeparator));
    }

    private Run run(String[] settings, String... args) throws IOException, InterruptedException {
        Process process = start(settings, args);
        try {
            assertThat(process.waitFor(5, TimeUnit.MINUTES)).as("it ends").isTrue();
        } finally {
            process.destroyForcibly();
        }
        return new Run(process.exitValue(), told("stdout"), told("stderr"));
    }

    private String told(String stream) throws IOException {
        return Files.readString(folder.resolve(stream), StandardCharsets.UTF_8);
    }

    private Run runHere(String... args) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        int exitCode = SparkAudit.run(new PrintWriter(out), new PrintWriter(err), args);
        return new Run(exitCode, out.toString(), err.toString());
    }

    private void assertAudited(Run run) {
        assertThat(run.err()).isEmpty();
        assertThat(run.exitCode()).isZero();
        assertThat(run.out()).contains("Season summer: ").contains("rows seen 29").contains("out/summer");
        assertThat(run.out().lines()).hasSize(5);
        assertThat(folder.resolve("out/summer/report.html")).isRegularFile();
    }

    @Test
    void withoutAMasterThisMachineDoesTheWorkAndSparkSaysNothingOfItsOwn() throws Exception {
        assertAudited(run(NONE));
    }

    @Test
    void aMasterGoesBeforeTheOneOfTheSubmit() throws Exception {
        assertAudited(run(new String[] {"-Dspark.master=nonsense"}, "--master", "local[1]"));
    }

    @Test
    void theMasterOfTheSubmitIsTakenWhereNoneIsNamed() throws Exception {
        assertAudited(run(new String[] {"-Dspark.master=local[1]"}));

        Run refused = run(new String[] {"-Dspark.master=nonsense"});

        assertThat(refused.exitCode()).isEqualTo(2);
        assertThat(refused.err().lines()).singleElement().asString().startsWith("spark.master: 'nonsense' names no machines");
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "foo",
                "",
                "local[0]",
                "local[two]",
                "local[-1]",
                "spark://",
                "spark://here",
                "spark://127.0.0.1:x",
                "spark://127.0.0.1:99999",
                "spark://127.0.0.1:7077,",
                "k8s://"
            })
    void aWrongMasterIsRefusedBeforeSparkStarts(String master) {
        Run run = runHere(season.toString(), "-o", folder.resolve("out").toString(), "--master", master);

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .startsWith("--master: '" + master + "' names no machines; expected local[*]");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @Test
    void aMasterAtWhichNothingAnswersIsRefusedAtOnce() throws Exception {
        int port;
        try (ServerSocket free = new ServerSocket(0, 1, InetAddress.getLoopbackAddress())) {
            port = free.getLocalPort();
        }
        String master = "spark://127.0.0.1:" + port + ",127.0.0.1:" + port;

        Run run = runHere(season.toString(), "-o", folder.resolve("out").toString(), "--master", master);

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().lines()).singleElement().asString().startsWith("--master: nothing answers at " + master);
    }

    @ParameterizedTest
    @ValueSource(strings = {"yarn", "k8s://https://127.0.0.1:6443"})
    void otherMachinesAreRefusedWhereNothingTakesTheProgramToThem(String master) {
        Run run = runHere(season.toString(), "-o", folder.resolve("out").toString(), "--master", master);

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .startsWith("--master: only spark-submit takes the program to the machines of " + master);
    }

    @Test
    void aMasterThatIsNoneEndsTheRunWithAMessage() throws Exception {
        try (ServerSocket other = new ServerSocket(0, 50, InetAddress.getLoopbackAddress())) {
            String master = "spark://127.0.0.1:" + other.getLocalPort();

            Run run = run(SUBMITTED, "--master", master);

            assertThat(run.exitCode()).as(run.err()).isEqualTo(2);
            assertThat(run.err()).contains("Spark gave up on " + master).doesNotContain("\tat ");
            assertThat(folder.resolve("out")).doesNotExist();
        }
    }

    @Test
    void aMasterThatOnlyAClusterHasIsToldOnce() throws Exception {
        Run run = run(SUBMITTED, "--master", "yarn");

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().lines()).singleElement().asString().startsWith("Spark does not start on yarn: ");
    }

    @Test
    void aRunThatIsKilledLeavesTheReportsOfTheOneBeforeAndTheNextClearsUp() throws Exception {
        assertAudited(run(NONE, "--master", "local[2]"));
        Path reports = folder.resolve("out/summer");
        String before = Files.readString(reports.resolve("run.json"));
        Files.copy(OneSpark.DEMO.resolve("season-2026-05.csv"), season.resolve("more.csv"));

        Process process = start(NONE, "--master", "local[1]", "--partitions", "2");
        try {
            Path parts = reports.resolve(".writing/parts");
            for (int i = 0; i < 3_000 && !Files.exists(parts) && process.isAlive(); i++) {
                Thread.sleep(20);
            }
            assertThat(parts).isDirectory();
        } finally {
            process.destroyForcibly().waitFor();
        }
        assertThat(Files.readString(reports.resolve("run.json"))).isEqualTo(before);
        assertThat(reports.resolve(".writing")).isDirectory();
        Files.delete(season.resolve("more.csv"));

        assertAudited(run(NONE, "--master", "local[2]"));
        assertThat(reports.resolve(".writing")).doesNotExist();
        assertThat(Files.readString(reports.resolve("run.json"))).isEqualTo(before);
    }

    @Test
    void withoutSparkOnTheClassPathItIsSaidHowToStart() throws Exception {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        classPathWithout("org.apache.spark|org/apache/spark|slf4j-nop"),
                        SparkAudit.class.getName(),
                        season.toString())
                .redirectErrorStream(true)
                .start();

        String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        assertThat(process.waitFor()).isEqualTo(2);
        assertThat(said.lines()).singleElement().asString().startsWith("Spark is not here: ");
    }

    @Test
    void aForeignFileIsToldWithWhatToDo() throws Exception {
        Path mine = Files.createDirectories(folder.resolve("out/summer")).resolve("season.xlsx");
        Files.writeString(mine, "mine", StandardCharsets.UTF_8);

        Run run = run(NONE, "--master", "local[2]");

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err().lines())
                .singleElement()
                .asString()
                .contains("season.xlsx")
                .contains("give --force if it may be lost");
        assertAudited(run(NONE, "--master", "local[2]", "--force"));
    }

    @ParameterizedTest
    @CsvSource({
        "--name, .., the name '..' cannot be that of a folder",
        "--name, a/b, the name 'a/b' cannot be that of a folder",
        "--map, x, There is no heading map 'x'",
        "--delimiter, ab, is not one character; expected comma",
        "--partitions, 0, expected whole numbers from 1 on",
        "--config, ., cannot be used"
    })
    void theCommandTellsItsFaultsBeforeSparkStarts(String option, String value, String message) {
        Run run = runHere(season.toString(), option, value.equals(".") ? folder.toString() : value);

        assertThat(run.exitCode()).isEqualTo(2);
        assertThat(run.err()).contains(message).doesNotContain("\tat ");
    }

    @Test
    void aFolderKeepsItsWholeNameAndAPathWithAColonIsRead() throws Exception {
        Path named = Files.createDirectories(folder.resolve("to: 2026.spring"));
        Files.copy(season.resolve("flights.csv"), named.resolve("a: b.csv"));
        season = named;

        Run run = run(NONE, "--master", "local[2]", "--name", "spring", "--delimiter", "comma");

        assertThat(run.exitCode()).as(run.err()).isZero();
        assertThat(run.out()).contains("Season spring: ");

        season = Files.move(named, folder.resolve("2026.spring"));
        assertThat(run(NONE, "--master", "local[2]").out()).contains("Season 2026.spring: ");
    }

    @Test
    void aFileThatIsNoParquetIsToldWithItsName() throws Exception {
        Files.writeString(season.resolve("more.parquet"), "no table at all, though long enough", StandardCharsets.UTF_8);

        Run run = run(NONE, "--master", "local[2]");

        assertThat(run.exitCode()).as(run.err()).isEqualTo(2);
        assertThat(run.err().lines()).singleElement().asString().startsWith("more.parquet: this cannot be read");
    }
}
