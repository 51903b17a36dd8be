package org.steelyard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.report.file.Destination;

class DemoSeasonTest {

    private static final Path DATA_IN = Path.of("data-in");
    private static final Path KEY = Path.of("demo-key.csv");
    private static final Configuration CONFIGURATION =
            ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();

    @Test
    void theGeneratorWritesTheSeasonThatIsKeptByteForByte(@TempDir Path folder) throws IOException {
        DemoSeason.write(Destination.of(folder), CONFIGURATION);

        assertThat(files(folder.resolve("demo"))).isEqualTo(files(DATA_IN.resolve("demo")));
        for (Path file : files(folder.resolve("demo"))) {
            assertThat(folder.resolve("demo").resolve(file))
                    .as("%s; 'mvn -q test-compile exec:java@demo' writes the season anew", file)
                    .hasSameBinaryContentAs(DATA_IN.resolve("demo").resolve(file));
        }
        assertThat(folder.resolve(KEY)).hasSameBinaryContentAs(DATA_IN.resolve(KEY));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(Path::getFileName).sorted().toList();
        }
    }

    @Test
    void whatIsPlantedComesOfTheAuditAndNothingElse() throws IOException {
        List<String> found = new ArrayList<>();
        for (Path file : files(DATA_IN.resolve("demo"))) {
            eachRow(DATA_IN.resolve("demo").resolve(file), row -> found.addAll(outcomes(row)));
        }

        assertThat(found).containsExactlyInAnyOrderElementsOf(key());
    }

    @Test
    void theSeasonIsAsLongAndAsVariedAsItIsSaidToBe() throws IOException {
        List<Loading> loadings = new ArrayList<>();
        for (Path file : files(DATA_IN.resolve("demo"))) {
            eachRow(DATA_IN.resolve("demo").resolve(file), row -> {
                if (row instanceof ParsedRow.Accepted accepted) {
                    loadings.add(accepted.loading());
                }
            });
        }

        assertThat(loadings).hasSizeBetween(2900, 3300);
        assertThat(loadings)
                .extracting(loading -> loading.tail().registration())
                .containsAll(CONFIGURATION.tails().keySet());
        assertThat(loadings)
                .extracting(loading -> loading.load().getClass().getSimpleName())
                .contains("ByPlace", "Totals", "ZeroFuelGiven", "TakeoffGiven");
        assertThat(loadings)
                .extracting(loading -> loading.flight().date().getMonthValue())
                .containsOnly(4, 5, 6, 7, 8, 9);
    }

    private static void eachRow(Path file, Consumer<ParsedRow> consumer) {
        ReadOptions options = ReadOptions.of(CONFIGURATION.maps());
        try (SourceFile source =
                SourceFile.open(file, options, Tails.of(CONFIGURATION.tails().values()))) {
            for (var batch = source.nextBatch(500); batch.isPresent(); batch = source.nextBatch(500)) {
                batch.map(RawRows::parse).orElseThrow().forEach(consumer);
            }
            assertThat(source.problems()).as("%s as a whole", file).isEmpty();
        }
    }

    /** Breaches, marginals and reasons to reject, as the key writes them; blank rows are in no file by name. */
    private static List<String> outcomes(ParsedRow row) {
        if (row instanceof ParsedRow.Accepted accepted) {
            Loading loading = accepted.loading();
            return Checker.check(loading, Balancer.balance(loading, CONFIGURATION.policy()), CONFIGURATION.policy())
                    .findings()
                    .stream()
                    .filter(finding -> finding.severity() != Severity.NOTE)
                    .map(finding -> line(loading.origin(), finding))
                    .toList();
        }
        if (row instanceof ParsedRow.Rejected rejected) {
            return rejected.row().problems().stream().map(DemoSeasonTest::line).toList();
        }
        return List.of("blank");
    }

    private static String line(Origin origin, Finding finding) {
        return String.join(
                " | ",
                origin.file(),
                String.valueOf(origin.row()),
                "finding",
                finding.code().code(),
                finding.severity().label(),
                finding.phase().label());
    }

    private static String line(InputProblem problem) {
        return String.join(
                " | ",
                problem.origin().file(),
                String.valueOf(problem.origin().row()),
                "rejected",
                problem.code().code(),
                problem.column());
    }

    private static List<String> key() throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(Files.newBufferedReader(DATA_IN.resolve(KEY)), format)) {
            return parser.stream().map(DemoSeasonTest::line).toList();
        }
    }

    private static String line(CSVRecord record) {
        String begin =
                String.join(" | ", record.get("file"), record.get("row"), record.get("outcome"), record.get("code"));
        return switch (record.get("outcome")) {
            case "finding" -> begin + " | " + record.get("severity") + " | " + record.get("phase");
            case "rejected" -> begin + " | " + record.get("column");
            default -> "blank";
        };
    }
}
