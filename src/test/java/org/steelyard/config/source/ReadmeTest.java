package org.steelyard.config.source;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Readme;
import org.steelyard.model.input.Field;

/** Holds the README to what the loader does. */
class ReadmeTest {

    private static final Pattern ROW = Pattern.compile("(?m)^\\| `([^`]+)` \\|.*?\\|(?: `([^`]+)` \\|)?$");

    @Test
    void examplesAreASoundConfiguration(@TempDir Path folder) {
        Readme.write(folder, Readme.examples());

        assertThat(ConfigFolder.load(folder))
                .isInstanceOfSatisfying(
                        ConfigResult.Loaded.class,
                        loaded -> assertThat(loaded.configuration().sources())
                                .extracting(ConfigSource::path)
                                .containsExactlyInAnyOrderElementsOf(
                                        Readme.examples().keySet()));
    }

    @ParameterizedTest
    @CsvSource({
        "Types, type.",
        "Fleet, fleet.",
        "Standard masses, schemes.",
        "Policy, policy.",
        "Marking, marking.",
        "Columns, map.",
        "Airframes, airframe.",
    })
    void everyKeyThatTheLoaderAsksForIsExplainedAndNoOther(String section, String kind, @TempDir Path folder) {
        Readme.write(folder, Readme.examples());
        Faults faults = new Faults();
        ConfigFolder.load(folder, faults);
        Set<String> known = new TreeSet<>();
        for (String key : faults.knownKeys()) {
            if (key.startsWith(kind)) {
                known.add(key.substring(kind.length())
                        .replaceFirst("^(envelopes)\\.[a-z-]+\\.(forward|aft)\\.", "$1.*.*.")
                        .replaceFirst("^(envelopes)\\.[a-z-]+\\.(forward|aft)$", "$1.*.$2"));
            }
        }

        assertThat(rows(section).keySet()).isEqualTo(known);
    }

    @ParameterizedTest
    @CsvSource({
        "Types, types/example.yaml",
        "Fleet, fleet.csv",
        "Standard masses, standard-masses.yaml",
        "Policy, policy.yaml",
        "Marking, marking.yaml",
        "Columns, columns/example.yaml",
        "Airframes, airframes/example.yaml",
    })
    void everyExampleInATableStandsInTheExampleFile(String section, String file) {
        String example = Readme.examples().get(file);

        assertThat(rows(section)).isNotEmpty().allSatisfy((key, snippet) -> {
            assertThat(example).contains(snippet);
            assertThat(snippet).matches(text -> file.endsWith(".csv") || text.startsWith(lastOf(key) + ":"));
        });
    }

    @Test
    void everyFieldOfAHeadingMapIsExplained() {
        Matcher matcher = Pattern.compile("(?m)^\\| ((?:`[a-z-]+`(?:, )?)+) \\|.*\\|.*\\|.*\\|$")
                .matcher(Readme.text());
        List<String> fields = new ArrayList<>();
        while (matcher.find()) {
            fields.addAll(List.of(matcher.group(1).replace("`", "").split(", ", -1)));
        }

        assertThat(fields)
                .containsExactlyInAnyOrderElementsOf(
                        Stream.of(Field.values()).map(Field::key).toList());
    }

    private static String lastOf(String key) {
        return key.substring(key.lastIndexOf('.') + 1);
    }

    /** Keys and examples of the first table of a section. */
    private static Map<String, String> rows(String section) {
        Map<String, String> rows = new java.util.TreeMap<>();
        String text = Readme.text();
        int begin = text.indexOf("\n## " + section + "\n");
        int end = text.indexOf("\n## ", begin + 1);
        Matcher matcher = ROW.matcher(text.substring(begin, end < 0 ? text.length() : end));
        while (matcher.find()) {
            if (matcher.group(2) != null) {
                rows.put(matcher.group(1), matcher.group(2));
            }
        }
        return rows;
    }
}
