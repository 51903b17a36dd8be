package org.steelyard.demo;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.grade.mark.Diagnosis;
import org.steelyard.grade.mark.Explanation;
import org.steelyard.grade.mark.MarkedSheet;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.file.Destination;
import org.steelyard.run.GradeRun;

/** The class that comes with the project is what the generator writes, and its key is what marking finds. */
class ClassDemoTest {

    private static final Path DATA_IN = Path.of("data-in");

    private static Configuration configuration;
    private static GradeRun.Outcome outcome;

    @BeforeAll
    static void mark() throws SeasonUnreadableException {
        configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        outcome = GradeRun.mark(
                DATA_IN.resolve("class"),
                Optional.empty(),
                ReadOptions.of(configuration.maps()),
                configuration,
                configuration.marking().orElseThrow());
    }

    @Test
    void theGeneratorWritesTheClassThatIsKeptByteForByte(@TempDir Path folder) throws IOException {
        ClassDemo.write(Destination.of(folder), configuration);
        assertThat(folder.resolve("class-key.csv")).hasSameBinaryContentAs(DATA_IN.resolve("class-key.csv"));
        List<Path> kept = files(DATA_IN.resolve("class"));
        assertThat(files(folder.resolve("class")))
                .extracting(path -> String.valueOf(path.getFileName()))
                .isEqualTo(kept.stream()
                        .map(path -> String.valueOf(path.getFileName()))
                        .toList());
        for (Path file : kept) {
            assertThat(folder.resolve("class").resolve(file.getFileName())).hasSameBinaryContentAs(file);
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }

    @Test
    void everySheetIsReadFromTableOrWorkbookAndNothingIsLost() {
        assertThat(outcome.problems()).isEmpty();
        assertThat(outcome.sheets()).hasSize(40);
        assertThat(outcome.sheets().stream()
                        .filter(sheet -> sheet.sheet().origin().file().endsWith(".xlsx")))
                .hasSize(3);
    }

    @Test
    void everyPlantedSlipIsNamedAndNobodyElseIsBlamed() throws IOException {
        Map<String, String> planted = new HashMap<>();
        List<String> lines = Files.readAllLines(DATA_IN.resolve("class-key.csv"));
        lines.subList(1, lines.size()).forEach(line -> {
            String[] cells = line.split(",", 3);
            planted.put(cells[0], cells[2]);
        });
        for (MarkedSheet sheet : outcome.sheets()) {
            String wanted = planted.get(sheet.sheet().student());
            List<String> named = new ArrayList<>();
            if (sheet.diagnosis() instanceof Diagnosis.Found found) {
                for (Explanation one : found.explanations()) {
                    named.add(String.join(
                            " and ",
                            one.slips().stream()
                                    .map(slip -> slip.label())
                                    .sorted()
                                    .toList()));
                }
            }
            String sorted = String.join(
                    " and ", Stream.of(wanted.split(" and ", -1)).sorted().toList());
            assertThat(named)
                    .as("%s: %s", sheet.sheet().student(), wanted)
                    .satisfies(all -> assertThat(wanted.isEmpty() ? all.isEmpty() : all.contains(sorted))
                            .isTrue());
        }
    }
}
