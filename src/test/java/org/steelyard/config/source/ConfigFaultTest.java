package org.steelyard.config.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Readme;

/** Edits one place of the README's example and expects exactly the messages of the table of faults. */
class ConfigFaultTest {

    private static final Path TABLE = Path.of("src/test/resources/config/faults.txt");
    private static final Pattern CASE = Pattern.compile(
            "(?m)^(?<file>[^#<>=\\s].*)\\n< (?<before>.*)\\n> ?(?<after>.*)\\n(?<messages>(?:= .*\\n?)+)");
    private static final Pattern EDIT = Pattern.compile(":#([+-]\\d+)?");

    record Case(String file, String before, String after, List<String> messages) {

        @Override
        public String toString() {
            return file + " " + (after.isEmpty() ? "without " + before : after);
        }
    }

    static Stream<Case> cases() throws IOException {
        List<Case> cases = new ArrayList<>();
        String table = Files.readString(TABLE);
        Matcher matcher = CASE.matcher(table);
        while (matcher.find()) {
            cases.add(new Case(
                    matcher.group("file"),
                    unescaped(matcher.group("before")),
                    unescaped(matcher.group("after")),
                    matcher.group("messages")
                            .lines()
                            .map(line -> line.substring(2))
                            .toList()));
        }
        assertThat(cases)
                .hasSize(
                        (int) table.lines().filter(line -> line.startsWith("<")).count())
                .isNotEmpty();
        return cases.stream();
    }

    private static String unescaped(String text) {
        return text.replace("\\n", "\n").replace("\\t", "\t");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aFaultIsNamedWithItsPlaceAndWhatWouldDo(Case edit, @TempDir Path folder) {
        Map<String, String> files = new LinkedHashMap<>(Readme.examples());
        String text = files.get(edit.file());
        int at = text.indexOf(edit.before());
        assertThat(at).as("place of the edit").isNotNegative();
        files.put(
                edit.file(),
                text.substring(0, at)
                        + edit.after()
                        + text.substring(at + edit.before().length()));
        Readme.write(folder, files);

        long line = text.substring(0, at).chars().filter(c -> c == '\n').count() + 1;
        assertThat(messages(folder))
                .containsExactlyElementsOf(edit.messages().stream()
                        .map(message -> withLine(message, line))
                        .toList());
    }

    private static String withLine(String message, long line) {
        return EDIT.matcher(message)
                .replaceFirst(found -> ":" + (line + (found.group(1) == null ? 0 : Long.parseLong(found.group(1)))));
    }

    private static List<String> messages(Path folder) {
        return ConfigFolder.load(folder) instanceof ConfigResult.Faulty faulty
                ? faulty.faults().stream().map(ConfigFault::message).toList()
                : List.of();
    }
}
