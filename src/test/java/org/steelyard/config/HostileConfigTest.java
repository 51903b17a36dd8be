package org.steelyard.config;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.config.source.ConfigFault;

/** Configuration files that are attacks or accidents: each is refused with file, line and reason. */
class HostileConfigTest {

    private static final String TYPE = "types/example.yaml";
    private static final String POLICY = "policy.yaml";

    @TempDir
    private Path folder;

    /** A file of the README's example with other content, and what is said of it. */
    private record Case(String name, String path, String content, Charset charset, String said) {

        @Override
        public String toString() {
            return name;
        }
    }

    private static Case of(String name, String path, String content, String said) {
        return new Case(name, path, content, StandardCharsets.UTF_8, said);
    }

    private static Case edited(String name, String before, String after, String said) {
        String text = Readme.examples().get(TYPE);
        assertThat(text).contains(before);
        return of(name, TYPE, text.replace(before, after), said);
    }

    static Stream<Case> cases() {
        String ramp = "max-ramp: 5730 kg";
        String notOne = ":masses.max-ramp: not a number with a unit (value '";
        StringBuilder laughs = new StringBuilder("a0: &a0 [ha, ha]\n");
        for (int i = 1; i < 40; i++) {
            laughs.append("a")
                    .append(i)
                    .append(": &a")
                    .append(i)
                    .append(" [*a")
                    .append(i - 1)
                    .append(", *a")
                    .append(i - 1)
                    .append("]\n");
        }
        return Stream.of(
                of(
                        "laughs",
                        POLICY,
                        laughs.toString(),
                        "policy.yaml:2:a1[1]: a reference to another place (value '*a0'"),
                of("cyclic", POLICY, "a: &a\n  b: *a\n", "policy.yaml:2:a.b: a reference to another place (value '*a'"),
                of("merged", POLICY, "a: &a {b: 1}\n<<: *a\n", "policy.yaml:2:<<: a reference to another place"),
                of("doubled", POLICY, "a: 1\na: 2\n", "policy.yaml:2:a: the key stands twice (expected each key once)"),
                of("deep list", POLICY, "a: " + "[".repeat(100_000), "policy.yaml:"),
                of("deep keys", POLICY, "{a: ".repeat(100_000), "policy.yaml:"),
                of("deep lines", POLICY, deepLines(3_000), "policy.yaml:"),
                of("tag", POLICY, "!!java.net.URL [\"http://localhost\"]\n", "policy.yaml:1: the file holds a list"),
                of("huge scalar", POLICY, "a: " + "x".repeat(2_000_000), "policy.yaml:1:a: unknown key"),
                of("huge key", POLICY, "x".repeat(500) + ": 1", "policy.yaml:1:" + "x".repeat(120) + "…: unknown key"),
                of("huge file", POLICY, "# ".repeat(5 << 20), "policy.yaml: the file is larger than 8 MB (expected"),
                of("nul", POLICY, "a: \u0000\n", "policy.yaml:1: not readable as YAML"),
                of("two documents", POLICY, "a: 1\n---\nb: 2\n", "policy.yaml:3: a second document begins here"),
                of("empty", POLICY, "", "policy.yaml: the file is empty"),
                new Case("wide", POLICY, "a: 1", StandardCharsets.UTF_16, "policy.yaml: not a text in UTF-8"),
                new Case("Latin", POLICY, "a: \u00E9", StandardCharsets.ISO_8859_1, "policy.yaml: not a text in UTF-8"),
                of(
                        "fleet without end",
                        "fleet.csv",
                        "tail,type\n\"QI-AAA",
                        "fleet.csv: not readable as comma-separated"),
                of(
                        "fleet heading",
                        "fleet.csv",
                        "\"tail\nx\",type\n",
                        "fleet.csv:1: unknown heading; the nearest that is known is 'tail' (value 'tail x'"),
                of("fleet of NULs", "fleet.csv", "\u0000".repeat(1_000), "fleet.csv:1: unknown heading"),
                edited(
                        "exponent",
                        ramp,
                        "max-ramp: 1e308 kg",
                        ":masses.max-ramp: unknown unit 'e308 kg' (value '1e308 kg'"),
                edited("not a number", ramp, "max-ramp: NaN kg", notOne + "NaN kg"),
                edited("infinite", ramp, "max-ramp: Infinity kg", notOne + "Infinity kg"),
                edited("hexadecimal", ramp, "max-ramp: 0x1F kg", "unknown unit 'x1F kg' (value '0x1F kg'"),
                edited("below zero", ramp, "max-ramp: -0 kg", ":masses.max-ramp: "),
                edited(
                        "400 digits",
                        ramp,
                        "max-ramp: " + "9".repeat(400) + " kg",
                        ":masses.max-ramp: too large a number (value '999"));
    }

    /** A type whose lines, tables and tanks have a single point, and what is said of it. */
    static Stream<Case> singlePoints() {
        String forward =
                "forward: {straight-in: arm, points: [{mass: 3200 kg, cg: 5.20 m}, {mass: 5.1 t, cg: 5.24 m}]}";
        String aft =
                "aft: {straight-in: moment, points: [{mass: 3200 kg, cg: 36 % MAC}, {mass: 5700 kg, cg: 36 % MAC}]}";
        String points = "        - {cg: 9 % MAC, trim: 2.5}\n        - {cg: 36 % MAC, trim: -1.5}\n";
        String rows =
                "          - {mass: 3200 kg, trim: [-2.0, 1.5]}\n          - {mass: 5700 kg, trim: [-2.5, 1.0]}\n";
        String arms = "        - {contents: 300 kg, arm: 5.30 m}\n        - {contents: full, arm: 5.42 m}\n";
        return Stream.of(
                edited(
                        "one vertex ahead",
                        forward,
                        forward.replace(", {mass: 5.1 t, cg: 5.24 m}", ""),
                        "envelopes.zero-fuel.forward: a limit line needs at least two vertices"),
                edited(
                        "one vertex behind",
                        aft,
                        aft.replace("{mass: 3200 kg, cg: 36 % MAC}, ", ""),
                        "envelopes.in-flight.aft: a limit line needs at least two vertices"),
                edited(
                        "two vertices at one mass",
                        forward,
                        forward.replace("5.1 t", "3200 kg"),
                        "envelopes.zero-fuel.forward: a limit line must span some mass"),
                edited(
                        "one point of trim",
                        points,
                        points.substring(0, points.indexOf('\n') + 1),
                        "trim[1].law: a trim scale needs at least two points"),
                edited(
                        "two points of trim at one CG",
                        points,
                        points.replace("36 %", "9 %"),
                        "trim[1].law: CG of a trim scale must rise: 9.0 after 9.0"),
                edited(
                        "one column of trim",
                        "cg: [9 % MAC, 36 % MAC]\n        rows:\n" + rows,
                        "cg: [9 % MAC]\n        rows:\n          - {mass: 3200 kg, trim: [-2.0]}\n          - {mass: 5700 kg, trim: [-2.5]}\n",
                        "trim[2].law.table: "),
                edited(
                        "one row of trim",
                        rows,
                        rows.substring(0, rows.indexOf('\n') + 1),
                        "trim[2].law.table: a trim table needs at least two masses"),
                edited("a slope of one CG", "to: 36 % MAC", "to: 9 % MAC", "trim[3].law.slope"),
                edited(
                        "a tank of one point",
                        arms,
                        arms.substring(0, arms.indexOf('\n') + 1),
                        "fuel.tanks[1]: the arm table must reach the capacity of 711.0 kg"),
                edited("a tank of one point when full", arms, arms.substring(arms.indexOf('\n') + 1), ""),
                edited(
                        "a tank of one point when empty",
                        arms,
                        arms.substring(0, arms.indexOf('\n') + 1).replace("300", "0"),
                        "fuel.tanks[1].arms[1].contents: must be more than zero (value '0 kg'"),
                edited(
                        "a tank without a point",
                        "arms:\n" + arms,
                        "arms: []\n",
                        "fuel.tanks[1].arms: the list is empty (expected at least one entry)"),
                edited(
                        "a group of one",
                        "holds: [nose, tail]",
                        "holds: [nose]",
                        "groups[1]: a group needs at least two places"),
                edited(
                        "a cabin row of no length",
                        "{first: 1, last: 2, arm: 3.7 m, pitch: 0.8 m, seats: 2}",
                        "{first: 1, last: 1, arm: 3.7 m, pitch: 0 m, seats: 4}",
                        "cabin.zones[1].rows[1].pitch: must be more than zero"));
    }

    @ParameterizedTest
    @MethodSource("singlePoints")
    void aTypeOfSinglePointsIsRefusedOrMeansSomething(Case one) throws IOException {
        List<String> faults = faults(one.path(), one.content().getBytes(one.charset()));
        if (one.said().isEmpty()) {
            assertThat(faults).isEmpty();
        } else {
            assertThat(faults).anyMatch(fault -> fault.contains(one.said()));
        }
    }

    private static String deepLines(int depth) {
        StringBuilder lines = new StringBuilder();
        for (int i = 0; i < depth; i++) {
            lines.append(" ".repeat(i)).append("a:\n");
        }
        return lines.toString();
    }

    private List<String> faults(String path, byte[] content) throws IOException {
        Readme.write(folder, Readme.examples());
        Files.write(folder.resolve(path), content);
        return ConfigFolder.load(folder) instanceof ConfigResult.Faulty faulty
                ? faulty.faults().stream().map(ConfigFault::message).toList()
                : List.of();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void aHostileFileIsRefusedInMessagesOfOneLine(Case one) throws IOException {
        List<String> faults = faults(one.path(), one.content().getBytes(one.charset()));
        assertThat(faults).anyMatch(fault -> fault.contains(one.said())).allMatch(fault -> fault.length() < 3_000);
        assertThat(faults).noneMatch(fault -> fault.chars().anyMatch(Character::isISOControl));
    }

    @Test
    void aFleetOfTenThousandTailsIsRead() throws IOException {
        Map<String, String> files = Readme.examples();
        String fleet = files.get("fleet.csv");
        String tail = fleet.lines().skip(1).findFirst().orElseThrow();
        String known = tail.substring(0, tail.indexOf(','));
        StringBuilder many = new StringBuilder(fleet);
        for (int i = 0; i < 10_000; i++) {
            many.append(tail.replace(known, "Q" + i)).append('\n');
        }
        assertThat(faults("fleet.csv", many.toString().getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
    }

    @Test
    void aDeviceIsNoFileOfTheConfiguration() throws IOException {
        Readme.write(folder, Readme.examples());
        Files.delete(folder.resolve(POLICY));
        Files.createSymbolicLink(folder.resolve(POLICY), Path.of("/dev/zero"));
        assertThat(ConfigFolder.load(folder))
                .isInstanceOfSatisfying(
                        ConfigResult.Faulty.class,
                        faulty -> assertThat(faulty.faults())
                                .extracting(ConfigFault::message)
                                .contains(
                                        "policy.yaml: a pipe or a device, not a file (expected a file of this name)"));
        Files.delete(folder.resolve(POLICY));
    }
}
