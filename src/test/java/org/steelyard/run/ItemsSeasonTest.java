package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.assertj.core.groups.Tuple;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonUnreadableException;
import org.steelyard.report.output.RunFacts;
import org.steelyard.samples.Plain;

/** A season of every level with a file of load items, through a whole run with the project's own configuration. */
class ItemsSeasonTest {

    /** The items stand before the flights by name, and are read after them. */
    private static final Map<String, String> FILES =
            new LinkedHashMap<>(Map.of("items-may.csv", """
            flight,date,tail,zone,row,hold,tank,station,what,pieces,kg
            J4,2026-05-02,QI-JAB,,3,,,,M,4,
            J4,2026-05-02,QI-JAB,,14C,,,,F,1,
            J4,2026-05-02,QI-JAB,,29,,,,CHD,6,
            J4,2026-05-02,QI-JAB,,,2,,,bags,40,
            J4,2026-05-02,QI-JAB,,,3,,,cargo,,250
            J4,2026-05-02,QI-JAB,,,,left,,,,3000
            J4,2026-05-02,QI-JAB,,,,right,,,,3000
            ,,,,,,,,,,
            J4,2026-05-02,QI-JAB,,,,,cockpit,,3,276
            J7,2026-05-04,QI-JAD,,,9,,,bags,4,
            J9,2026-05-04,QI-JAD,,,2,,,bags,4,
            """, "season-may.csv", """
            flight,date,tail,flaps,pax total,pax A,pax E,load total kg,hold 1 kg,fuel left kg,fuel right kg,fuel total kg,\
            taxi kg,trip kg,zfw kg,zfw cg % mac,tow kg,tow cg % mac
            J1,2026-05-01,QI-JAA,5,120,,,3000,,,,9000,200,4000,,,,
            J2,2026-05-01,QI-JAA,5,,20,22,1500,,3000,3000,,200,4000,,,,
            J3,2026-05-02,QI-JAB,5,100,,,,700,3000,3000,,200,4000,,,,
            J4,2026-05-02,QI-JAB,5,,,,,,,,,200,4000,,,,
            J5,2026-05-03,QI-JAC,5,,,,,,3000,3000,,200,4000,58000,24.0,,
            J6,2026-05-03,QI-JAC,5,,,,,,,,,,,,,63000,25.0
            J7,2026-05-04,QI-JAD,5,,,,,,3000,3000,,200,4000,,,,
            """));

    @TempDir
    private Path folder;

    private SeasonOutcome run(String reports, int threads)
            throws IOException, InterruptedException, SeasonUnreadableException {
        Path season = Files.createDirectories(folder.resolve("season"));
        for (Map.Entry<String, String> file : FILES.entrySet()) {
            Files.writeString(season.resolve(file.getKey()), file.getValue(), StandardCharsets.UTF_8);
        }
        Configuration configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        return SeasonRun.audit(
                Plain.seasonRequest(
                        season,
                        "may",
                        configuration,
                        ReadOptions.of(configuration.maps()),
                        folder.resolve(reports),
                        threads,
                        "test",
                        List.of()),
                Progress.SILENT);
    }

    private static List<List<String>> flights(Path file, String... columns) throws IOException {
        List<List<String>> rows = new ArrayList<>();
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        try (CSVParser parser = CSVParser.parse(file, StandardCharsets.UTF_8, format)) {
            for (CSVRecord row : parser) {
                rows.add(Stream.of(columns).map(row::get).toList());
            }
        }
        return rows;
    }

    @Test
    void everyRowIsCountedAndEveryFlightSaysWhatIsAssumed() throws Exception {
        SeasonOutcome outcome = run("one", 1);
        assertThat(outcome.facts().inputs())
                .extracting(
                        RunFacts.InputFile::name,
                        RunFacts.InputFile::rowsSeen,
                        RunFacts.InputFile::accepted,
                        RunFacts.InputFile::rejected,
                        RunFacts.InputFile::blank)
                .containsExactly(
                        Tuple.tuple("season-may.csv", 7L, 6L, 1L, 0L), Tuple.tuple("items-may.csv", 11L, 8L, 2L, 1L));
        assertThat(outcome.facts().inputs().get(1).notes())
                .contains("8 accepted rows are load items of the season's flights");
        assertThat(outcome.summary().all().flights()).isEqualTo(6);
        assertThat(flights(
                        outcome.folder().resolve("flights.csv"), "flight", "input_level", "assumed", "assumed_parts"))
                .containsExactly(
                        List.of("J1", "totals", "yes", "passengers, holds, fuel"),
                        List.of("J2", "zones, holds in total", "yes", "holds"),
                        List.of("J3", "holds, passengers in total", "yes", "passengers"),
                        List.of("J4", "detail", "no", ""),
                        List.of("J5", "zero fuel given", "no", ""),
                        List.of("J6", "take-off given", "no", ""));
    }

    @Test
    void theNumberOfThreadsChangesNothing() throws Exception {
        Path one = run("one", 1).folder();
        Path four = run("four", 4).folder();
        for (String name : List.of("flights.csv", "findings.csv", "rejected.csv", "run.json", "report.html")) {
            assertThat(four.resolve(name)).as(name).hasSameBinaryContentAs(one.resolve(name));
        }
    }
}
