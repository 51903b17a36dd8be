package org.steelyard.demo;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import org.steelyard.config.Configuration;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.report.file.Destination;
import org.steelyard.report.file.StagedFolder;

/**
 * The demo season: a summer of the invented airline by months in the house's export, August in its ledger, and the
 * club's list; and beside the season's folder the key to what is planted in it. The same configuration gives the same
 * bytes.
 */
public final class DemoSeason {

    private static final int YEAR = 2026;
    private static final int FIRST_MONTH = 4;
    private static final int LAST_MONTH = 9;
    private static final int LEDGER_MONTH = 8;

    private final Configuration configuration;
    private final Schedule schedule;
    private final PlantedLoadings loadings;

    private DemoSeason(Configuration configuration) {
        this.configuration = configuration;
        this.schedule = new Schedule(List.copyOf(configuration.tails().values()), new Audit(configuration.policy()));
        this.loadings = new PlantedLoadings(configuration.tails());
    }

    /**
     * Writes the season's folder {@code demo} and the key {@code demo-key.csv}.
     *
     * @param to folder for both
     * @param configuration the configuration that comes with the project
     * @throws IOException if a file cannot be written
     */
    public static void write(Destination to, Configuration configuration) throws IOException {
        List<PlannedFile> files = new DemoSeason(configuration).files();
        try (StagedFolder staged = StagedFolder.ofInputs(to)) {
            for (PlannedFile file : files) {
                byte[] bytes = file.style() == Style.LEDGER ? LedgerWriter.bytes(file) : CsvWriter.bytes(file);
                Files.write(staged.file("demo/" + file.name()), bytes);
            }
            Files.writeString(staged.file("demo-key.csv"), KeyFile.text(files), StandardCharsets.UTF_8);
            staged.publish();
        }
    }

    private List<PlannedFile> files() throws IOException {
        List<PlannedFile> files = new ArrayList<>();
        List<Entry> club = schedule.club(LocalDate.of(YEAR, FIRST_MONTH, 1), LocalDate.of(YEAR, LAST_MONTH, 30));
        files.add(file("club-2026.csv", Style.CLUB, club));
        for (int month = FIRST_MONTH; month <= LAST_MONTH; month++) {
            Style style = month == LEDGER_MONTH ? Style.LEDGER : Style.HOUSE;
            String name = String.format(
                    Locale.ROOT, style == Style.LEDGER ? "ledger-%d-%02d.xlsx" : "season-%d-%02d.csv", YEAR, month);
            files.add(file(name, style, schedule.airline(style, YearMonth.of(YEAR, month))));
        }
        files.sort(Comparator.comparing(PlannedFile::name));
        return files;
    }

    private PlannedFile file(String name, Style style, List<Entry> clean) throws IOException {
        ColumnMap map = configuration.maps().stream()
                .filter(found -> found.name().equals(style.mapName()))
                .findAny()
                .orElseThrow(() -> new IllegalArgumentException("no heading map '" + style.mapName() + "'"));
        List<Entry> entries = new ArrayList<>(clean);
        entries.addAll(loadings.of(name, style));
        PlannedFile ordered = PlannedFile.inOrder(name, style, map, entries);
        return new PlannedFile(name, style, map, PlantedInputs.into(name, map, ordered.entries()));
    }
}
