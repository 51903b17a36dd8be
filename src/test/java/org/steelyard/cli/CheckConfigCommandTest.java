package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The shipped configuration proved and shown, and with one thing changed. */
class CheckConfigCommandTest {

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    /** A copy of the shipped configuration. */
    private Path copy() throws IOException {
        Path shipped = Path.of("config");
        Path config = folder.resolve("config");
        try (Stream<Path> files = Files.walk(shipped)) {
            files.forEach(
                    file -> copy(file, config.resolve(shipped.relativize(file).toString())));
        }
        return config;
    }

    private static void copy(Path from, Path to) {
        try {
            if (Files.isDirectory(from)) {
                Files.createDirectories(to);
            } else {
                Files.copy(from, to);
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private Path edited(String file, String before, String after) throws IOException {
        Path config = copy();
        Path edited = config.resolve(file);
        String text = Files.readString(edited);
        assertThat(text).contains(before);
        Files.writeString(edited, text.replace(before, after));
        return config;
    }

    /** The output with the lines of one remark in one. */
    private String unwrapped() {
        return out.toString().replace("\n    ", " ");
    }

    @Test
    void aSoundConfigurationIsListedAndShownTypeByType() {
        assertThat(run("check-config", "-c", "config")).isZero();
        assertThat(err.toString()).isEmpty();
        assertThat(out.toString())
                .startsWith("12 files read from config:\n  airframes/single4.yaml, columns/club.yaml,")
                .contains("No faults: 3 types, 24 tails, 4 heading maps.")
                .contains("━━ jet180: Twin-jet of 180 seats ━━━")
                .contains("  maximum take-off   74,500\n")
                .contains("  index                    mass × (arm − 18.600 m) / 1000 kg m + 50\n")
                .contains("  index                    mass × (arm − 100.0 in) / 1000 lb in + 20\n")
                .contains("  2   hold 2        2,400  12.400  −130.0  4.2 × 1.2 m, 720 kg/m, 730 kg/m²\n")
                .contains("  rear body  rear body            7,200  hold 4, hold 5, zone E, zone F\n")
                .contains("  burn          1  centre until 800 kg\n")
                .contains("  aft      moment and index    40,000   33.1  18.925   63.0\n")
                .contains(
                        "  take-off  15     any     document  units   0.1  1.0 DN to 1.8 UP  13.0 % MAC to 32.0 % MAC")
                .contains("        8.0    2.90 UP    3.30 UP    3.70 UP    3.85 UP\n")
                .contains("  QI-JAA          40,950  18.568   24.2   48.7\n")
                .contains("Nothing else to remark.")
                .contains("For simulation, training and analysis only.");
        assertThat(out.toString().lines()).allSatisfy(line -> assertThat(line).hasSizeLessThanOrEqualTo(110));
    }

    @Test
    void oneTypeCanBeAskedForAndTheTablesLeftOut() {
        assertThat(run("check-config", "--type", "single4", "--brief")).isZero();
        assertThat(out.toString())
                .contains("━━ single4: Light single of four seats")
                .doesNotContain("jet180:")
                .doesNotContain("Limits of mass");
        assertThat(run("check-config", "--type", "glider")).isEqualTo(2);
        assertThat(err.toString()).contains("There is no type 'glider'; there are jet180, prop70, single4.");
    }

    @Test
    void everyFaultIsListedUnderItsFileWithExitCodeTwo() throws IOException {
        Path config = edited("types/prop70.yaml", "max-ramp: 23150 kg", "max-ramp: 23150");
        Files.writeString(config.resolve("policy.yaml"), "sharing: by mood\n");
        assertThat(run("check-config", "-c", config.toString())).isEqualTo(2);
        assertThat(out.toString())
                .startsWith("12 files read from " + config + ":\n")
                .contains("  policy.yaml\n    policy.yaml:1:sharing: unknown word")
                .contains(
                        "  types/prop70.yaml\n    types/prop70.yaml:10:masses.max-ramp: the unit is missing (value '23150';"
                                + " expected a mass in kg, lb or t, as '18500 kg')\n")
                .containsPattern("(?m)^\\d faults:$")
                .doesNotContain("No faults");
    }

    @Test
    void aFolderThatIsNotThereIsAFault() {
        Path nowhere = folder.resolve("nowhere");
        assertThat(run("check-config", "-c", nowhere.toString())).isEqualTo(2);
        assertThat(out.toString()).contains("the folder is missing (expected a configuration folder)");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "name: Turboprop of 70 seats | name: Turboprop of 72 seats"
                        + " | cabin: the name says 72 seats, the zones have 70",
                "arm: 16.5 m | arm: 13.3 m | cabin: zones C and D have the same arm, 13.30 m",
                "max: 950 kg | max: 1500 kg"
                        + " | hold 2: its floor carries 1,400 kg spread evenly, less than its maximum of 1,500 kg",
                "max: 1150 kg | max: 1300 kg"
                        + " | group rear: its maximum of 1,300 kg is not below the sum of its holds, 1,300 kg, and so"
                        + " limits nothing",
                "0.79 kg/L | 0.97 kg/L"
                        + " | fuel: a density of 0.970 kg/L is unusual: fuels lie between 0.68 and 0.85",
                "minimum: 13400 kg | minimum: 12100 kg"
                        + " | take-off envelope: begins at 12,500 kg, above the minimum mass of 12,100 kg: lighter"
                        + " flights have no limits of CG",
                "{mass: 18000 kg, cg: 12.5 % MAC} | {mass: 18000 kg, cg: 15.5 % MAC}"
                        + " | take-off envelope: reaches 2.5 % MAC ahead of the in-flight envelope: it permits what is"
                        + " not permitted in flight",
                "{mass: 15500 kg, cg: 38.0 % MAC} | {mass: 15500 kg, cg: 36.0 % MAC}"
                        + " | landing envelope: reaches 1.0 % MAC behind the in-flight envelope: it permits what is not"
                        + " permitted in flight",
                "- {cg: 38 % MAC, trim: 1.0} | - {cg: 36 % MAC, trim: 1.0}"
                        + " | take-off trim, flaps 10: covers 12.0 to 36.0 % MAC, the take-off envelope 13.0 to 37.0:"
                        + " beyond the scale there is no setting",
                "most-nose-up: -3.4 | most-nose-up: -2.4"
                        + " | take-off trim, flaps 10: asks for 3.0° UP on the forward limit at 12,500 kg, beyond its"
                        + " band up to 2.4° UP",
                "most-nose-down: 1.4 | most-nose-down: 0.2"
                        + " | take-off trim, flaps 10: asks for 0.4° DN on the aft limit at 12,500 kg, beyond its band"
                        + " from 0.2° DN",
                "most-nose-down: 1.4 | most-nose-down: 1.5"
                        + " | take-off trim, flaps 10: the end of its band at 1.50° DN is no whole step of the"
                        + " indicator",
                "constant: 40 | constant: -10 | QI-PAB: its index is below zero; the constant of the index is meant to"
                        + " keep it positive",
            })
    void whatIsNoFaultButProbablyASlipIsRemarked(String before, String after, String remark) throws IOException {
        Path config = edited("types/prop70.yaml", before, after);
        assertThat(run("check-config", "-c", config.toString(), "--type", "prop70", "--brief"))
                .isZero();
        assertThat(unwrapped()).contains("No fault, but worth a second look:").contains("  " + remark + "\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "QI-JAA,jet180,40950 kg,24.2 % MAC | QI-JAA,jet180,40950 kg,34.2 % MAC"
                        + " | QI-JAA: its basic CG of 34.2 % MAC is far from the others' median of 25.2",
                "QI-JAA,jet180,40950 kg,24.2 % MAC | QI-JAA,jet180,50950 kg,24.2 % MAC"
                        + " | QI-JAA: its basic mass of 50,950 kg is far from the others' median of 41,346 kg",
            })
    void aTailUnlikeTheOthersIsRemarked(String before, String after, String remark) throws IOException {
        Path config = edited("fleet.csv", before, after);
        assertThat(run("check-config", "-c", config.toString(), "--type", "jet180", "--brief"))
                .isZero();
        assertThat(unwrapped()).contains("  " + remark + "\n");
    }

    @Test
    void aTypeWithoutTailsAndASchemeWithoutSourceAreRemarked() throws IOException {
        Path config = copy();
        Path fleet = config.resolve("fleet.csv");
        Files.writeString(
                fleet,
                String.join(
                        "\n",
                        Files.readString(fleet)
                                .lines()
                                .filter(line -> !line.contains("prop70"))
                                .toList()));
        Path schemes = config.resolve("standard-masses.yaml");
        Files.writeString(
                schemes,
                Files.readString(schemes).replaceAll("(?s)(id: easa-30\\n    source: ).*?(?=    male)", "$1tbd\n"));
        assertThat(run("check-config", "-c", config.toString(), "--type", "prop70", "--brief"))
                .isZero();
        assertThat(out.toString())
                .contains("  fleet: no tail is of this type\n")
                .contains("  standard masses: the scheme easa-30 does not say where its figures come from\n");
    }

    @Test
    void aTrimTableThatDoesNotReachTheLightestFlightsIsRemarked() {
        assertThat(run("check-config", "--type", "jet180", "--brief")).isZero();
        assertThat(unwrapped())
                .contains(
                        "  take-off trim, flaps 1: is for 46,000 kg to 75,000 kg, flights are from 43,500 kg to 74,500"
                                + " kg: beyond the scale there is no setting\n");
    }

    @Test
    void aPageIsWrittenForEachType() throws IOException {
        Path pages = folder.resolve("pages");
        assertThat(run("check-config", "--brief", "--write", pages.toString())).isZero();
        assertThat(out.toString())
                .contains("Written into " + pages + ": type-jet180.html, type-prop70.html, type-single4.html");
        try (Stream<Path> files = Files.list(pages)) {
            assertThat(files).hasSize(3 + 1);
        }
        Files.delete(pages.resolve("type-jet180.html"));
        Files.createDirectory(pages.resolve("type-jet180.html"));
        Files.createFile(pages.resolve("type-jet180.html").resolve("x"));
        assertThat(run("check-config", "--brief", "--write", pages.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("The pages cannot be written to " + pages);
    }
}
