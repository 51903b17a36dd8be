package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.cli.option.ExitCode;
import org.steelyard.hostile.HostileFiles;

/** The commands beside audit, each given files of the hostile corpus for its own: a reason and exit code 2. */
class HostileInputsTest {

    private static final Set<String> NAMES = Set.of(
            "season-empty.csv",
            "season-wide.csv",
            "season-long-heading.csv",
            "season-pdf.xlsx",
            "season-none.xlsx",
            "season-zip.csv",
            "season-older.csv",
            "season-locked.xlsx",
            "season-cut-5.xlsx",
            "season-bomb.xlsx",
            "season-bomb-types.xlsx",
            "season-laughs-xlworksheetssheetxml.xlsx",
            "season-loop.csv",
            "season-dangling.csv",
            "season-device.csv",
            "season-folder.csv");

    @TempDir
    private static Path folder;

    private static List<Path> files = List.of();

    /** A command line whose words FILE and OUT are put in. */
    private record Line(String name, List<String> words) {

        @Override
        public String toString() {
            return name;
        }
    }

    static Stream<Line> lines() {
        return Stream.of(
                new Line("propose-map", List.of("propose-map", "FILE")),
                new Line("grade", List.of("grade", "FILE", "-o", "OUT")),
                new Line("grade --given", List.of("grade", "data-in/class", "--given", "FILE", "-o", "OUT")),
                new Line(
                        "fit-scale --pairs",
                        List.of("fit-scale", "FILE", "--pairs", "--type", "prop70", "--flaps", "10")),
                new Line("fit-scale", List.of("fit-scale", "FILE")),
                new Line("against", List.of("against", "FILE", "FILE", "-o", "OUT")));
    }

    @BeforeAll
    static void makeFiles() throws IOException {
        List<Path> made = new ArrayList<>();
        for (HostileFiles.Case one : HostileFiles.all()) {
            if (NAMES.contains(one.name())) {
                Path file = folder.resolve(one.name());
                one.maker().make(file);
                made.add(file);
            }
        }
        files = List.copyOf(made);
        assertThat(files).hasSameSizeAs(NAMES);
    }

    private record Said(int exitCode, String words) {}

    private static Said run(List<String> words) {
        StringWriter lines = new StringWriter();
        PrintWriter writer = new PrintWriter(lines, true);
        int exitCode = Main.run(writer, writer, words.toArray(String[]::new));
        return new Said(exitCode, lines.toString());
    }

    @ParameterizedTest
    @MethodSource("lines")
    void aHostileInputIsRefusedInPlainWords(Line line) {
        for (Path file : files) {
            String name = String.valueOf(file.getFileName());
            Said said = run(line.words().stream()
                    .map(word -> word.equals("FILE") ? file.toString() : word)
                    .map(word -> word.equals("OUT") ? folder.resolve("out").toString() : word)
                    .toList());
            assertThat(said.words())
                    .as("%s of %s", line, name)
                    .containsPattern(Pattern.quote(name) + "(\\[Raw])?:")
                    .doesNotContain("Exception", "\tat ", "fault of the program");
            assertThat(said.exitCode()).as("%s of %s", line, name).isEqualTo(ExitCode.CANNOT);
            assertThat(said.words().lines().filter(one -> one.startsWith(name)))
                    .as("%s of %s", line, name)
                    .doesNotHaveDuplicates();
        }
    }

    /** What can be read of a file is used, and what cannot is named. */
    @ParameterizedTest
    @MethodSource("partly")
    void whatCanBeReadOfAFileIsUsed(List<String> words, String name, String said) {
        Path file = folder.resolve(name);
        HostileFiles.all().stream().filter(one -> one.name().equals(name)).forEach(one -> make(one, file));
        Said answer = run(words.stream()
                .map(word -> word.equals("FILE") ? file.toString() : word)
                .map(word -> word.equals("OUT") ? folder.resolve("out").toString() : word)
                .toList());
        assertThat(answer.words()).contains(said).doesNotContain("Exception");
        assertThat(answer.exitCode()).isEqualTo(ExitCode.FINISHED);
    }

    static Stream<Arguments> partly() {
        String unclosed = "season-unclosed.csv";
        String opens = unclosed + ":3: a quotation mark opens here and is never closed";
        return Stream.of(
                Arguments.of(List.of("grade", "FILE", "-o", "OUT"), unclosed, opens),
                Arguments.of(List.of("against", "FILE", "FILE", "-o", "OUT"), unclosed, opens),
                Arguments.of(List.of("propose-map", "FILE"), "season-nul.csv", "6 columns, headings in row 1"));
    }

    @Test
    void whereExercisesAreMadeOfAnAirframeThatIsCutShortTheConfigurationIsRefused() throws IOException {
        Path config = folder.resolve("config");
        try (Stream<Path> shipped = Files.walk(Path.of("config"))) {
            for (Path one : shipped.toList()) {
                Path copy = config.resolve(Path.of("config").relativize(one).toString());
                if (Files.isDirectory(one)) {
                    Files.createDirectories(copy);
                } else {
                    Files.copy(one, copy);
                }
            }
        }
        Path airframe = config.resolve("airframes/single4.yaml");
        byte[] whole = Files.readAllBytes(airframe);
        for (byte[] bytes : List.of(
                new byte[0], new byte[100], Arrays.copyOf(whole, whole.length / 2), new byte[] {'P', 'K', 3, 4, -1})) {
            Files.write(airframe, bytes);
            for (List<String> words : List.of(
                    List.of("estimate-scale", "single4", "--config", config.toString()),
                    List.of("make-exercises", "single4", "--config", config.toString()))) {
                Said said = run(words);
                assertThat(said.words()).contains("airframes/single4.yaml:").doesNotContain("Exception", "\tat ");
                assertThat(said.exitCode()).isEqualTo(ExitCode.CANNOT);
            }
        }
    }

    private static void make(HostileFiles.Case one, Path file) {
        try {
            one.maker().make(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
