package org.steelyard.spark;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.apache.spark.api.java.JavaSparkContext;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.StagedFolder;
import org.steelyard.run.SeasonOutcome;

/** On Spark, too, inputs stay, and nothing is written over that this program did not write, unless it is forced. */
class OutputsStayTest {

    private static final String KEPT = "mine: not to be lost\n";

    private static JavaSparkContext spark;

    @TempDir
    private Path folder;

    private Path season;

    @BeforeAll
    static void start() {
        spark = OneSpark.context();
        spark.hadoopConfiguration().set(Elsewhere.IMPLEMENTATION, Elsewhere.class.getName());
    }

    @BeforeEach
    void season() throws IOException {
        season = folder.resolve("in/summer");
        write(season, 30);
    }

    /** A season of so many rows, some of which are rejected and some passed over. */
    private static void write(Path season, int rows) throws IOException {
        List<String> lines = Files.readAllLines(OneSpark.DEMO.resolve("season-2026-04.csv"), StandardCharsets.UTF_8);
        Files.createDirectories(season);
        Files.write(season.resolve("flights.csv"), lines.subList(0, rows), StandardCharsets.UTF_8);
    }

    /** A second row of a flight, which is passed over. */
    private void repeatRow() throws IOException {
        Path file = season.resolve("flights.csv");
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        Files.writeString(
                file,
                Files.readString(file, StandardCharsets.UTF_8) + lines.get(lines.size() - 1) + "\n",
                StandardCharsets.UTF_8);
    }

    private String address(String where, String name) {
        Path path = folder.resolve(name);
        return where.equals("elsewhere") ? Elsewhere.address(path) : path.toString();
    }

    private SeasonOutcome audit(String where, String name, String reports, boolean force) throws Exception {
        return SparkRun.audit(
                spark, OneSpark.request(address(where, "in/summer"), name, address(where, reports), force));
    }

    private Path mine(String name) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        return Files.writeString(file, KEPT, StandardCharsets.UTF_8);
    }

    private static String text(Path file) throws IOException {
        return Files.readString(file, StandardCharsets.UTF_8);
    }

    /** All files below a folder by their names in it, with size and checksum. */
    private static Map<String, String> sums(Path folder) throws Exception {
        Map<String, String> sums = new TreeMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                byte[] bytes = Files.readAllBytes(file);
                byte[] digest = MessageDigest.getInstance("SHA-256").digest(bytes);
                sums.put(
                        folder.relativize(file).toString().replace('\\', '/'),
                        bytes.length + " " + HexFormat.of().formatHex(digest));
            }
        }
        return sums;
    }

    private static Map<String, String> listed(Path reports) throws IOException {
        Map<String, String> listed = new TreeMap<>();
        JsonNode run =
                new ObjectMapper().readTree(reports.resolve("run.json").toFile());
        for (JsonNode output : run.path("outputs")) {
            listed.put(
                    output.path("file").asText(),
                    output.path("bytes").asText() + " " + output.path("sha256").asText());
        }
        return listed;
    }

    @ParameterizedTest
    @CsvSource({
        "here,      summer, in,        is",
        "here,      in,     '',        holds",
        "here,      new,    in/summer, lies in",
        "elsewhere, summer, in,        is",
        "elsewhere, in,     '',        holds",
        "elsewhere, new,    in/summer, lies in"
    })
    void reportsAreNotPutWhereTheSeasonIs(String where, String name, String reports, String how) throws Exception {
        mine("in/summer/new/notes.txt");
        Map<String, String> before = sums(folder);

        for (boolean force : new boolean[] {false, true}) {
            assertThatThrownBy(() -> audit(where, name, reports, force))
                    .isInstanceOf(FileSystemException.class)
                    .hasMessageContaining("it " + how + " the folder of the inputs");
        }

        assertThat(sums(folder)).isEqualTo(before);
    }

    @ParameterizedTest
    @ValueSource(strings = {"here", "elsewhere"})
    void reportsMayLieInTheSeasonsFolderWhereNothingElseIs(String where) throws Exception {
        Files.createDirectories(season.resolve("new"));

        audit(where, "new", "in/summer", false);
        SeasonOutcome again = audit(where, "new", "in/summer", false);

        assertThat(again.facts().inputs()).hasSize(1);
        assertThat(listed(season.resolve("new"))).containsKey("report.html");
    }

    @ParameterizedTest
    @ValueSource(strings = {"here", "elsewhere"})
    void whatThisProgramWroteIsNoInput(String where) throws Exception {
        audit(where, "out", "", false);
        for (String name : List.of("statistics.csv", "run.json")) {
            Files.copy(folder.resolve("out").resolve(name), season.resolve(name));
        }

        SeasonOutcome outcome = audit(where, "out", "", false);

        assertThat(outcome.facts().inputs()).hasSize(1);
        assertThat(outcome.facts().skipped()).anyMatch(skipped -> skipped.name().equals("statistics.csv")
                && skipped.reason().equals("an output of this program"));
    }

    @ParameterizedTest
    @ValueSource(strings = {"here", "elsewhere"})
    void everyOutputIsListedWithSizeAndChecksum(String where) throws Exception {
        repeatRow();
        audit(where, "out", "", false);

        Map<String, String> found = sums(folder.resolve("out"));
        found.put("run.json", " ");
        assertThat(found)
                .containsKeys(
                        "flights.parquet/part-000000.parquet",
                        "findings.parquet/part-000000.parquet",
                        "skipped/part-000000.csv",
                        "season.xlsx");
        assertThat(listed(folder.resolve("out"))).isEqualTo(found);
    }

    @ParameterizedTest
    @CsvSource({
        "here,      season.xlsx",
        "here,      statistics.csv",
        "here,      run.json",
        "here,      flights.parquet/part-000000.parquet",
        "here,      flights.parquet/notes.txt",
        "here,      findings.parquet/more/notes.txt",
        "elsewhere, season.xlsx",
        "elsewhere, run.json",
        "elsewhere, flights.parquet/part-000000.parquet",
        "elsewhere, rejected/notes.txt"
    })
    void aForeignFileIsWrittenOverByForceOnly(String where, String name) throws Exception {
        Path mine = mine("out/" + name);

        assertThatThrownBy(() -> audit(where, "out", "", false))
                .isInstanceOf(FileSystemException.class)
                .hasMessageContaining(name)
                .hasMessageContaining("this program did not write the file there, or it was changed since")
                .hasMessageContaining("--force");
        assertThat(sums(folder.resolve("out"))).hasSize(1);
        assertThat(text(mine)).isEqualTo(KEPT);

        audit(where, "out", "", true);
        Map<String, String> found = sums(folder.resolve("out"));
        found.put("run.json", " ");
        found.remove("rejected/notes.txt"); // nothing was to be written there
        assertThat(listed(folder.resolve("out"))).isEqualTo(found);
    }

    @ParameterizedTest
    @CsvSource({
        "here,      statistics.csv",
        "here,      flights.parquet/part-000000.parquet",
        "elsewhere, statistics.csv",
        "elsewhere, flights.parquet/part-000000.parquet"
    })
    void aFileThatWasChangedSinceIsWrittenOverByForceOnly(String where, String name) throws Exception {
        audit(where, "out", "", false);
        audit(where, "out", "", false); // over its own
        mine("out/" + name);
        Map<String, String> before = sums(folder);

        assertThatThrownBy(() -> audit(where, "out", "", false)).hasMessageContaining("changed since");

        assertThat(sums(folder)).isEqualTo(before);
        audit(where, "out", "", true);
        assertThat(text(folder.resolve("out/statistics.csv"))).contains("take-off CG");
    }

    @Test
    void anInputIsNotWrittenOver() throws Exception {
        audit("here", "out", "", false);
        String statistics = folder.resolve("out/statistics.csv").toString();

        assertThatThrownBy(() -> SparkRun.audit(spark, OneSpark.request(statistics, "out", folder.toString(), false)))
                .hasMessageContaining("the file there is read by this command");
    }

    @ParameterizedTest
    @ValueSource(strings = {"here", "elsewhere"})
    void whatAnEarlierRunWroteAndThisOneDoesNotGoes(String where) throws Exception {
        OneSpark.oneMachine(season, "out", folder);
        Files.writeString(folder.resolve("out/findings.csv"), KEPT, StandardCharsets.UTF_8);
        mine("out/notes.txt");
        repeatRow();

        audit(where, "out", "", false);
        assertThat(folder.resolve("out/flights.csv")).doesNotExist();
        assertThat(folder.resolve("out/skipped.csv")).doesNotExist();
        assertThat(folder.resolve("out/skipped")).isDirectory();
        assertThat(text(folder.resolve("out/findings.csv"))).isEqualTo(KEPT);
        assertThat(text(folder.resolve("out/notes.txt"))).isEqualTo(KEPT);

        write(season, 30);
        audit(where, "out", "", false);
        assertThat(folder.resolve("out/skipped")).doesNotExist();
        assertThat(text(folder.resolve("out/notes.txt"))).isEqualTo(KEPT);
    }

    @Test
    void anAuditOnOneMachineWritesOverThatOnSparkAndBack() throws Exception {
        audit("here", "out", "", false);

        OneSpark.oneMachine(season, "out", folder);
        assertThat(folder.resolve("out/flights.csv")).isRegularFile();
        assertThat(folder.resolve("out/flights.parquet")).doesNotExist();

        audit("here", "out", "", false);
        assertThat(folder.resolve("out/flights.csv")).doesNotExist();
        assertThat(folder.resolve("out/flights.parquet")).isDirectory();
    }

    @Test
    void onlyOneRunAtATimeWritesIntoAFolder() throws Exception {
        audit("here", "out", "", false);
        Map<String, String> before = sums(folder.resolve("out"));
        try (StagedFolder other = StagedFolder.in(Destination.of(folder), "out")) {
            other.file("season.xlsx");

            assertThatThrownBy(() -> audit("here", "out", "", false))
                    .hasMessageContaining("another run is writing into it at this moment");
        }
        assertThat(sums(folder.resolve("out"))).isEqualTo(before);
    }

    @ParameterizedTest
    @CsvSource({"here, 1", "here, 3", "elsewhere, 1", "elsewhere, 3"})
    void whatARunThatWasKilledWhileItPutItsFilesInPlaceLeftIsKnownAsOurs(String where, int moved) throws Exception {
        audit(where, "out", "", false);
        write(season, 50);
        audit(where, "more", "", false);
        Path out = folder.resolve("out");
        Path more = folder.resolve("more");
        Files.copy(more.resolve("run.json"), out.resolve(".run.json"));
        for (String name : List.of("flights.parquet/part-000000.parquet", "statistics.csv", "season.xlsx")
                .subList(0, moved)) {
            Files.copy(more.resolve(name), out.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }

        audit(where, "out", "", false);

        Map<String, String> found = sums(out);
        found.put("run.json", " ");
        assertThat(listed(out)).isEqualTo(found);
        assertThat(out.resolve(".run.json")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "here,      statistics.csv,  a folder stands where the file is to be",
        "here,      flights.parquet, a file stands where a folder is needed",
        "elsewhere, statistics.csv,  a folder stands where the file is to be",
        "elsewhere, flights.parquet, a file stands where a folder is needed"
    })
    void whatIsInTheWayIsToldEvenByForce(String where, String name, String why) throws Exception {
        Path there = folder.resolve("out").resolve(name);
        if (name.endsWith(".csv")) {
            Files.createDirectories(there);
        } else {
            mine("out/" + name);
        }

        for (boolean force : new boolean[] {false, true}) {
            assertThatThrownBy(() -> audit(where, "out", "", force)).hasMessageContaining(why);
        }
        assertThat(there).exists();
    }

    @Test
    void aLinkInPlaceOfAFolderOfPartsIsNotFollowed() throws Exception {
        Path mine = mine("kept/part-000000.parquet");
        Files.createDirectories(folder.resolve("out"));
        Files.createSymbolicLink(folder.resolve("out/flights.parquet"), mine.getParent());

        assertThatThrownBy(() -> audit("here", "out", "", true))
                .hasMessageContaining("a link stands where a folder is needed");
        assertThat(text(mine)).isEqualTo(KEPT);
    }
}
