package org.steelyard.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.config.source.ConfigFault;
import org.steelyard.model.loading.Loading;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;

/** Maps drafted for the demo's files, which are then read without the maps that come with the project. */
class ProposeMapCommandTest {

    private static final Path DEMO = Path.of("data-in/demo");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;

    private Path config;

    /** The shipped configuration; its maps stay, as a configuration needs one, but none of the tests reads by them. */
    @BeforeEach
    void copyConfiguration() throws IOException {
        config = folder.resolve("config");
        Path shipped = Path.of("config");
        try (Stream<Path> files = Files.walk(shipped)) {
            files.forEach(
                    file -> copy(file, config.resolve(shipped.relativize(file).toString())));
        }
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

    private int run(String... args) {
        return Main.run(new PrintWriter(out, true), new PrintWriter(err, true), args);
    }

    /** Everything that a map makes of a file. */
    private record Outcome(List<Loading> accepted, List<String> rejected) {

        static Outcome of(Path file, String map, Configuration configuration) {
            List<Loading> accepted = new ArrayList<>();
            List<String> rejected = new ArrayList<>();
            ReadOptions options =
                    new ReadOptions(configuration.maps(), Optional.of(map), Optional.empty(), Optional.empty());
            Tails tails = Tails.of(configuration.tails().values());
            try (SourceFile source = SourceFile.open(file, options, tails)) {
                assertThat(source.map()).isPresent();
                for (Optional<RawRows> rows = source.nextBatch(500); rows.isPresent(); rows = source.nextBatch(500)) {
                    for (ParsedRow row : rows.get().parse()) {
                        if (row instanceof ParsedRow.Accepted good) {
                            accepted.add(good.loading());
                        } else if (row instanceof ParsedRow.Rejected bad) {
                            bad.row().problems().stream()
                                    .map(problem -> problem.message().replaceFirst("a date as .*", "a date"))
                                    .forEach(rejected::add);
                        }
                    }
                }
                assertThat(source.problems()).isEmpty();
            }
            return new Outcome(accepted, rejected);
        }
    }

    private Configuration load() {
        ConfigResult result = ConfigFolder.load(config);
        assertThat(result).isInstanceOf(ConfigResult.Loaded.class);
        return ((ConfigResult.Loaded) result).configuration();
    }

    @ParameterizedTest
    @CsvSource({
        "season-2026-05.csv, house, 450, nose-up",
        "ledger-2026-08.xlsx, ledger, 500,",
        "club-2026.csv, club, 150,",
    })
    void aDraftedMapReadsTheSameFlightsAsTheMapThatIsThere(String name, String shipped, int fewest, String trim)
            throws IOException {
        Path file = DEMO.resolve(name);
        Path map = config.resolve("columns/drafted.yaml");
        List<String> arguments = new ArrayList<>(List.of(
                "propose-map",
                file.toString(),
                "-c",
                config.toString(),
                "--name",
                "drafted",
                "--write",
                map.toString()));
        if (trim != null) {
            arguments.addAll(List.of("--trim", trim));
        }
        int exit = run(arguments.toArray(String[]::new));
        assertThat(err.toString()).isEmpty();
        assertThat(exit).isZero();
        assertThat(out.toString()).doesNotContain("To decide:").doesNotContain("Left out until");

        String written = Files.readString(map);
        assertThat(written).contains("\n# blank: none\n");
        Files.writeString(map, written.replace("\n# blank: none\n", "\nblank: none\n"));
        Configuration configuration = load();
        Outcome drafted = Outcome.of(file, "drafted", configuration);
        Outcome expected = Outcome.of(file, shipped, configuration);
        assertThat(drafted.accepted()).hasSizeGreaterThan(fewest).isEqualTo(expected.accepted());
        assertThat(drafted.rejected()).isNotEmpty().isEqualTo(expected.rejected());
    }

    @Test
    void withoutAWordOnTheSignOfTrimsThatIsTheOnlyColumnThatNeedsAPerson() {
        String file = DEMO.resolve("season-2026-05.csv").toString();
        assertThat(run("propose-map", file, "-c", config.toString())).isZero();
        assertThat(out.toString())
                .contains(
                        "To decide:\n  - Which way do the numbers of 'trim set' without UP or DN count? Say --trim nose-up or --trim nose-down.\n\nNothing is written");
    }

    @Test
    void nothingIsWrittenUnlessAskedForAndNothingWrittenOverWithoutForce() throws IOException {
        String file = DEMO.resolve("club-2026.csv").toString();
        assertThat(run("propose-map", file, "-c", config.toString())).isZero();
        assertThat(out.toString())
                .contains("Nothing is written; --write config/columns/club-2026.yaml keeps the map.")
                .contains("dd.MM.uuuu")
                .contains("S-001 | S-002 | S-003 | S-004 | S-005");

        Path there = Files.writeString(folder.resolve("m.yaml"), "mine");
        assertThat(run("propose-map", file, "-c", config.toString(), "--write", there.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("this program did not write the file there", "--force", "m.yaml");
        assertThat(there).hasContent("mine");

        assertThat(run("propose-map", file, "-c", config.toString(), "--write", there.toString(), "--force"))
                .isZero();
        assertThat(there)
                .content()
                .startsWith("# Drafted for club-2026.csv: look it over before it is used.\nmap: club-2026\n")
                .contains("files: [\"club-2026.csv\"]\ncharset: windows-1252\ndelimiter: semicolon\ndecimal: comma\n")
                .contains("  - {heading: Baggage 1 lb, field: hold-mass, place: 1, unit: lb}");
    }

    @Test
    void aDoubtfulColumnStandsInTheFileAsIgnoredWithItsReason() throws IOException {
        Path file = Files.writeString(
                folder.resolve("x.csv"), "Flight,Date,Reg,Pax: all,Hold 9 kg\nT1,2026-05-13,QI-JAA,12,5\n");
        Path map = config.resolve("columns/x.yaml");
        assertThat(run("propose-map", file.toString(), "-c", config.toString(), "--write", map.toString()))
                .isZero();
        assertThat(map)
                .content()
                .contains("  - {heading: \"Pax: all\", field: passengers}\n")
                .contains("  - {heading: Hold 9 kg, field: ignored} # left out: no hold of the types has such a name;");
        assertThat(load().maps()).extracting(one -> one.name()).contains("x");
    }

    @Test
    void placesOfOneTypeCanBeAskedFor() throws IOException {
        Path file = Files.writeString(folder.resolve("x.csv"), "Flight,Date,Reg,Seats front\nT1,2026-05-13,QI-SAA,1\n");
        assertThat(run("propose-map", file.toString(), "-c", config.toString(), "--type", "single4"))
                .isZero();
        assertThat(out.toString()).contains("passengers in front");
        assertThat(run("propose-map", file.toString(), "-c", config.toString(), "--type", "prop70"))
                .isZero();
        assertThat(out.toString()).contains("no zone of the types has such a name; there are A, B, C, D");
        assertThat(run("propose-map", file.toString(), "-c", config.toString(), "--type", "x"))
                .isEqualTo(2);
        assertThat(err.toString()).contains("There is no type 'x'; there are jet180, prop70, single4.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--decimal dot     | --decimal: unknown word (value 'dot'; expected comma or point)",
                "--trim up         | --trim: unknown word (value 'up'; expected nose-up or nose-down)",
                "--dates d/q{      | --dates: ",
            })
    void aChoiceThatIsNoneIsRefused(String options, String message) {
        String[] parts = options.split(" ", -1);
        assertThat(run("propose-map", DEMO.resolve("club-2026.csv").toString(), parts[0], parts[1]))
                .isEqualTo(2);
        assertThat(err.toString()).startsWith(message);
    }

    @Test
    void aSheetIsFoundByNameAndAFileThatIsNotThereIsSaid() {
        String ledger = DEMO.resolve("ledger-2026-08.xlsx").toString();
        assertThat(run("propose-map", ledger, "--sheet", "August")).isZero();
        assertThat(run("propose-map", ledger, "--sheet", "Mai")).isEqualTo(2);
        assertThat(err.toString())
                .contains("ledger-2026-08.xlsx: there is no such sheet (value 'Mai'; expected August)");
        assertThat(run("propose-map", "none.csv")).isEqualTo(2);
        assertThat(err.toString()).contains("none.csv: the file cannot be opened");
    }

    @Test
    void faultsOfTheConfigurationComeFirst() throws IOException {
        Files.writeString(config.resolve("policy.yaml"), "sharing: by mood\n");
        assertThat(run("propose-map", DEMO.resolve("club-2026.csv").toString(), "-c", config.toString()))
                .isEqualTo(2);
        assertThat(err.toString()).contains("policy.yaml:1:sharing: unknown word");
        assertThat(ConfigFolder.load(config))
                .isInstanceOfSatisfying(
                        ConfigResult.Faulty.class,
                        faulty -> assertThat(faulty.faults())
                                .extracting(ConfigFault::file)
                                .containsOnly("policy.yaml"));
    }
}
