package org.steelyard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Each package is a room of one job, small enough to be walked, that says what it is for and what it uses. */
class RoomsTest {

    private static final int MOST_FILES = 30;
    private static final List<Path> SOURCES =
            List.of(Path.of("src/main/java"), Path.of("src/demo/java"), Path.of("src/spark/merge/java"));
    private static final Pattern USES =
            Pattern.compile("\\* <p>Uses ([^.]*(?:\\.[a-z][^.]*)*)\\.\\n \\*/", Pattern.DOTALL);
    private static final Pattern ROOM = Pattern.compile("\\{@code ([a-z.]+)}");

    private static final Pattern IMPORT =
            Pattern.compile("^import (?:static )?org\\.steelyard\\.([a-z.]+)\\.[A-Z]", Pattern.MULTILINE);

    private static final Map<String, List<Path>> FILES = new TreeMap<>();

    @BeforeAll
    static void look() throws IOException {
        for (Path sources : SOURCES) {
            try (Stream<Path> all = Files.walk(sources)) {
                all.filter(path -> path.toString().endsWith(".java"))
                        .forEach(path -> FILES.computeIfAbsent(room(sources, path), name -> new ArrayList<>())
                                .add(path));
            }
        }
    }

    private static String room(Path sources, Path file) {
        List<String> folders = new ArrayList<>();
        sources.relativize(file.getParent()).forEach(folder -> folders.add(folder.toString()));
        return String.join(".", folders);
    }

    @Test
    void noRoomHoldsMoreThanCanBeWalked() {
        assertThat(FILES)
                .isNotEmpty()
                .allSatisfy((room, files) -> assertThat(files).hasSizeLessThanOrEqualTo(MOST_FILES));
    }

    @Test
    void noTwoTypesShareASimpleName() {
        Map<String, Long> names = FILES.values().stream()
                .flatMap(List::stream)
                .map(path -> String.valueOf(path.getFileName()))
                .filter(name -> !name.equals("package-info.java"))
                .collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()));
        names.values().removeIf(count -> count == 1);
        assertThat(names).isEmpty();
    }

    @Test
    void eachRoomSaysWhatItIsForAndNamesTheRoomsThatItUsesAndNoOthers() throws IOException {
        Map<String, Set<String>> said = new TreeMap<>();
        for (Map.Entry<String, List<Path>> room : FILES.entrySet()) {
            Path info = room.getValue().get(0).resolveSibling("package-info.java");
            assertThat(info).exists();
            said.put(room.getKey(), said(Files.readString(info, StandardCharsets.UTF_8)));
        }
        Map<String, Set<String>> used = new TreeMap<>();
        for (Map.Entry<String, List<Path>> room : FILES.entrySet()) {
            Set<String> rooms = used.computeIfAbsent(room.getKey(), absent -> new TreeSet<>());
            for (Path file : room.getValue()) {
                Matcher imported = IMPORT.matcher(Files.readString(file, StandardCharsets.UTF_8));
                while (imported.find()) {
                    rooms.add(imported.group(1));
                }
            }
        }
        assertThat(said).isEqualTo(used);
    }

    private static Set<String> said(String info) {
        Set<String> rooms = new TreeSet<>();
        Matcher uses = USES.matcher(info.replaceAll("\\n \\* (?!<p>)", " ").replaceAll(" +", " "));
        if (uses.find()) {
            Matcher room = ROOM.matcher(uses.group(1));
            while (room.find()) {
                rooms.add(room.group(1));
            }
        }
        return rooms;
    }
}
