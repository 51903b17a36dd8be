package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import picocli.CommandLine;

/** The documents can be read in the time that they promise, their links lead somewhere, and their commands are ours. */
class DocumentsTest {

    private static final Path HERE = Path.of("").toAbsolutePath();
    private static final Pattern LINK = Pattern.compile("\\[[^\\]]*]\\(([^)\\s]+)\\)");
    private static final Pattern HEADING = Pattern.compile("(?m)^#+ (.*)$");
    private static final Pattern COMMAND =
            Pattern.compile("(?m)^    (?:java -jar target/steelyard\\.jar|(?:target/)?steelyard) ([^#\n]*)");

    private static List<Path> documents() throws IOException {
        List<Path> found = new ArrayList<>(List.of(Path.of("README.md"), Path.of("DEVELOPERS.md")));
        for (String folder : List.of("src", "config", "data-in", "reports")) {
            try (Stream<Path> files = Files.walk(Path.of(folder))) {
                files.filter(file -> file.toString().endsWith(".md")).forEach(found::add);
            }
        }
        return found;
    }

    private static String text(Path document) throws IOException {
        return Files.readString(document, StandardCharsets.UTF_8);
    }

    /** As a heading is addressed: small letters, hyphens for blanks, and no other signs. */
    private static Set<String> anchors(Path document) throws IOException {
        return HEADING.matcher(text(document))
                .results()
                .map(heading -> heading.group(1)
                        .toLowerCase(Locale.ROOT)
                        .replaceAll("[^\\p{L}\\p{N}_ -]", "")
                        .replace(' ', '-'))
                .collect(Collectors.toSet());
    }

    @Test
    void everyLinkLeadsSomewhere() throws IOException {
        List<String> lost = new ArrayList<>();
        int links = 0;
        for (Path document : documents()) {
            Matcher link = LINK.matcher(text(document));
            while (link.find()) {
                if (link.group(1).matches("[a-z]+:.*")) {
                    continue;
                }
                links++;
                String[] target = link.group(1).split("#", 2);
                Path file = target[0].isEmpty()
                        ? document
                        : HERE.relativize(document.toAbsolutePath()
                                .resolveSibling(target[0])
                                .normalize());
                if (!Files.exists(file) || (target.length > 1 && !anchors(file).contains(target[1]))) {
                    lost.add(document + ": " + link.group(1));
                }
            }
        }
        assertThat(lost).isEmpty();
        assertThat(links).as("links looked at").isGreaterThan(20);
    }

    @ParameterizedTest
    @CsvSource({"README.md, 1500", "DEVELOPERS.md, 2500"})
    void canBeReadInOneGo(String document, int mostWords) throws IOException {
        assertThat(text(Path.of(document)).strip().split("\\s+")).hasSizeLessThanOrEqualTo(mostWords);
    }

    @Test
    void commandsOfTheDocumentsAreUnderstood() throws IOException {
        Set<String> named = new TreeSet<>();
        for (Path document : documents()) {
            Matcher command = COMMAND.matcher(text(document));
            while (command.find()) {
                String[] args = command.group(1).strip().split("\\s+");
                CommandLine line = new CommandLine(new Main());
                Main.COMMANDS.forEach(line::addSubcommand);
                assertThatCode(() -> line.parseArgs(args))
                        .as(document + ": " + command.group())
                        .doesNotThrowAnyException();
                named.add(args[0]);
            }
        }
        assertThat(named).contains("audit", "against", "grade", "make-exercises", "set", "cards", "check-config");
    }

    @Test
    void theMapOfPackagesNamesEachAndNoOther() throws IOException {
        Set<String> mapped = new TreeSet<>();
        Matcher row = Pattern.compile("(?m)^\\| ((?:`[a-z]+`(?: \\([^)]*\\))?(?:, )?)+) \\|")
                .matcher(text(Path.of("DEVELOPERS.md")));
        while (row.find()) {
            Matcher group = Pattern.compile("`([a-z]+)`(?: \\(([^)]*)\\))?").matcher(row.group(1));
            while (group.find()) {
                mapped.add(group.group(1));
                if (group.group(2) != null) {
                    for (String room : group.group(2).replace("`", "").split(", ")) {
                        mapped.add(group.group(1) + "." + room);
                    }
                }
            }
        }
        Path sources = Path.of("src/main/java/org/steelyard");
        Set<String> there = new TreeSet<>();
        try (Stream<Path> files = Files.walk(sources)) {
            files.filter(file -> file.toString().endsWith(".java"))
                    .map(file -> sources.relativize(file.getParent()))
                    .forEach(room -> {
                        there.add(room.getName(0).toString());
                        if (room.getNameCount() > 1) {
                            there.add(room.getName(0) + "." + room.getName(1));
                        }
                    });
        }
        assertThat(mapped).isEqualTo(there);
    }
}
