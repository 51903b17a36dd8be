package org.steelyard.config.value;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.steelyard.config.Readme;
import org.steelyard.config.file.ColumnsFile;
import org.steelyard.config.file.MarkingFile;
import org.steelyard.config.file.PolicyFile;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.config.source.Faults;
import org.steelyard.config.source.YamlText;
import org.steelyard.config.type.AirframeFile;
import org.steelyard.config.type.FleetFile;
import org.steelyard.config.type.SchemeFile;
import org.steelyard.config.type.TypeFile;
import org.steelyard.hostile.Draw;
import org.steelyard.hostile.Finite;
import org.steelyard.hostile.Fuzz;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MassScheme;

/** Drawn configuration files of every kind: each is read or refused with its faults, and nothing read is no number. */
class ConfigFuzzTest {

    private static final Map<String, String> FILES = Readme.examples();
    private static final KnownValues<MassScheme> SCHEMES = schemes();
    private static final KnownValues<AircraftType> TYPES = types();
    private static final KnownPlaces PLACES = KnownPlaces.of(TYPES.values().values(), true);
    private static final int LONGEST_MESSAGE = 3_000;

    private static final List<String> LINES = List.of(
            "a: &a [*a]",
            "<<: *a",
            "  - *a",
            "x: !!java.net.URL [\"x\"]",
            "x: !u 1",
            "? [a, b] : c",
            "--- ",
            "...",
            "%YAML 1.1",
            "\t- tab",
            "- - - - - - 1",
            "{{{{{{{{{{{{",
            "[[[[[[[[[[[[]]]]]]]]]]]]",
            "k: |2\n    text\n   less",
            "k: >-\n\n",
            "\"unclosed",
            "k: 'it''s",
            "# note",
            "? ",
            ": 1",
            "- ",
            "k: \"\\x00\\uD800\"",
            "k: \u0085\u2028",
            "\u0000");

    private static KnownValues<MassScheme> schemes() {
        Map<String, MassScheme> schemes = new TreeMap<>();
        keys("standard-masses.yaml", "schemes", new Faults())
                .map(SchemeFile::read)
                .orElseThrow()
                .forEach(scheme -> schemes.put(scheme.id(), scheme));
        return new KnownValues<>("scheme", schemes, schemes.keySet(), true);
    }

    private static KnownValues<AircraftType> types() {
        Map<String, AircraftType> types = new TreeMap<>();
        keys("types/example.yaml", "type", new Faults())
                .flatMap(keys -> TypeFile.read(keys, SCHEMES))
                .ifPresent(type -> types.put(type.id(), type));
        return new KnownValues<>("type", types, new HashSet<>(types.keySet()), true);
    }

    private static Optional<Keys> keys(String path, String kind, Faults faults) {
        return keys(path, kind, FILES.get(path), faults);
    }

    private static Optional<Keys> keys(String path, String kind, String text, Faults faults) {
        return YamlText.parse(path, text, faults).map(group -> Keys.of(path, kind, group, faults));
    }

    @Test
    void yamlIsReadOrRefused() {
        Fuzz.run("yaml", 300, new Yaml());
    }

    @Test
    void tablesAreReadOrRefused() {
        Fuzz.run("fleet", 1_000, new Fleet());
    }

    /** A value, or faults. */
    private record Read(Optional<?> value, List<String> faults) {}

    private static void check(Read first, Read again, int chance) throws ReflectiveOperationException {
        for (String message : first.faults()) {
            require(message.length() <= LONGEST_MESSAGE, "a message of " + message.length() + " characters");
            require(message.chars().noneMatch(Character::isISOControl), "a message with control characters");
        }
        if (first.value().isPresent()) {
            Finite.require(first.value().get(), Set.of());
        }
        require(chance % 16 != 0 || first.equals(again), "the same text read otherwise");
    }

    private static void require(boolean holds, String otherwise) {
        if (!holds) {
            throw new AssertionError(otherwise);
        }
    }

    /** A YAML file of one of six kinds. */
    private static final class Yaml implements Fuzz.Target {

        private final List<String> paths =
                FILES.keySet().stream().filter(path -> path.endsWith(".yaml")).toList();

        @Override
        public byte[] input(SplittableRandom random) {
            Draw draw = new Draw(random);
            int at = draw.below(paths.size());
            List<String> lines =
                    new ArrayList<>(FILES.get(paths.get(at)).lines().toList());
            if (draw.onceIn(2)) {
                section(lines, draw);
            }
            for (int i = draw.below(5); i >= 0 && !lines.isEmpty(); i--) {
                change(lines, draw);
            }
            byte[] text = String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
            byte[] bytes = draw.onceIn(6) ? draw.bytes(text) : text;
            return (at + new String(bytes, StandardCharsets.UTF_8)).getBytes(StandardCharsets.UTF_8);
        }

        /** Leaves most of a long file out: what is missing is then a fault, and what is there is read all the same. */
        private static void section(List<String> lines, Draw draw) {
            int from = draw.below(lines.size());
            int to = Math.min(lines.size(), from + 12);
            lines.subList(to, lines.size()).clear();
            lines.subList(Math.min(3, from), from).clear();
        }

        private static void change(List<String> lines, Draw draw) {
            int at = draw.below(lines.size());
            String line = lines.get(at);
            int colon = line.indexOf(':');
            switch (draw.below(12)) {
                case 0 -> lines.remove(at);
                case 1 -> lines.add(at, line);
                case 2 -> lines.add(at, draw.of(LINES));
                case 3 -> lines.set(at, " " + line);
                case 4 -> lines.set(at, line.strip());
                case 5 -> lines.add(draw.below(lines.size()), lines.remove(at));
                case 6 -> lines.set(at, draw.text(line));
                default -> {
                    if (colon >= 0) {
                        String value = line.substring(colon + 1);
                        int inner = value.lastIndexOf(": ");
                        String last = inner < 0 || draw.onceIn(2) ? "" : value.substring(0, inner + 1);
                        lines.set(at, line.substring(0, colon + 1) + last + " " + draw.cell(value));
                    }
                }
            }
        }

        @Override
        public void run(byte[] input) throws Exception {
            String whole = new String(input, StandardCharsets.UTF_8);
            String path = paths.get(whole.charAt(0) - '0');
            String text = whole.substring(1);
            Read first = read(path, text);
            check(first, input.length % 16 == 0 ? read(path, text) : first, input.length);
        }

        private static Read read(String path, String text) {
            Faults faults = new Faults();
            Optional<?> value = switch (path.replaceAll("/.*", "")) {
                case "types" -> keys(path, "type", text, faults).flatMap(keys -> TypeFile.read(keys, SCHEMES));
                case "airframes" ->
                    keys(path, "airframe", text, faults).flatMap(keys -> AirframeFile.read(keys, TYPES));
                case "columns" ->
                    keys(path, "map", text, faults).flatMap(keys -> ColumnsFile.read(keys, PLACES, SCHEMES));
                case "policy.yaml" -> keys(path, "policy", text, faults).flatMap(PolicyFile::read);
                case "marking.yaml" -> keys(path, "marking", text, faults).flatMap(MarkingFile::read);
                case "standard-masses.yaml" ->
                    keys(path, "schemes", text, faults).map(SchemeFile::read);
                default -> throw new IllegalStateException(path);
            };
            require(value.isPresent() || !faults.isEmpty(), "refused without a fault");
            return new Read(
                    faults.isEmpty() ? value : Optional.empty(),
                    faults.sorted().stream().map(ConfigFault::message).toList());
        }
    }

    /** A fleet. */
    private static final class Fleet implements Fuzz.Target {

        private final List<List<String>> table = CsvLines.of(FILES.get("fleet.csv"));

        @Override
        public byte[] input(SplittableRandom random) {
            Draw draw = new Draw(random);
            StringBuilder text = new StringBuilder();
            for (List<String> row : draw.table(table)) {
                text.append(String.join(",", row)).append(draw.onceIn(20) ? "\r" : "\n");
            }
            byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
            return draw.onceIn(6) ? draw.bytes(bytes) : bytes;
        }

        @Override
        public void run(byte[] input) throws Exception {
            String text = new String(input, StandardCharsets.UTF_8);
            Read first = read(text);
            check(first, input.length % 16 == 0 ? read(text) : first, input.length);
        }

        private static Read read(String text) {
            Faults faults = new Faults();
            Map<String, ?> tails =
                    FleetFile.read(HeadedRows.rows("fleet.csv", text, FleetFile.HEADINGS, faults), TYPES, SCHEMES);
            return new Read(
                    Optional.of(tails),
                    faults.sorted().stream().map(ConfigFault::message).toList());
        }
    }

    /** Plain lines of cells. */
    private static final class CsvLines {

        private CsvLines() {}

        static List<List<String>> of(String text) {
            return text.lines().map(line -> List.of(line.split(",", -1))).toList();
        }
    }
}
