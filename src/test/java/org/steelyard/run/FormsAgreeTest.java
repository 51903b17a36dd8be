package org.steelyard.run;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.config.ConfigFolder;
import org.steelyard.config.ConfigResult;
import org.steelyard.config.Configuration;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.read.season.RawRows;
import org.steelyard.read.season.SeasonFiles;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.report.flight.LoadSummary;
import org.steelyard.samples.KnownFlight;

/**
 * The same flights (a hundred in the full proof, {@code -Dsteelyard.formFlights=100}) at every level and in every form,
 * as text and as workbooks, in kilograms, pounds and tons, through three heading maps, come to the same printed results
 * wherever they say the same.
 */
class FormsAgreeTest {

    private static final long SEED = 20_260_501;
    private static final int FLIGHTS = Integer.getInteger("steelyard.formFlights", 10);

    private static Configuration configuration;
    private static AircraftType type;
    private static Tails tails;
    private static List<KnownFlight> known;
    private static FormWriter writer;
    private static List<AuditedFlight> detail;

    @TempDir
    private Path folder;

    @BeforeAll
    static void drawFlights(@TempDir Path first) throws IOException {
        configuration = ((ConfigResult.Loaded) ConfigFolder.load(Path.of("config"))).configuration();
        type = configuration.types().get("jet180");
        List<Tail> jets = configuration.tails().values().stream()
                .filter(tail -> tail.type().equals(type))
                .toList();
        tails = Tails.of(configuration.tails().values(), configuration.schemes().values());
        known = KnownFlight.draw(FLIGHTS, SEED, jets);
        writer = new FormWriter(type, known);
        detail = read(first, FormStyle.KILOS, false, writer.detail());
    }

    /** Reads tables as a season: files of flights before files of items. */
    private static List<AuditedFlight> read(Path folder, FormStyle style, boolean workbook, FormFiles... tables)
            throws IOException {
        List<Path> paths = new ArrayList<>();
        List<ColumnMap> maps = new ArrayList<>();
        Path own = Files.createTempDirectory(folder, "season");
        for (FormFiles table : tables) {
            paths.add(workbook ? table.xlsx(own, style, type) : table.csv(own, style, type));
            maps.add(table.map(style));
        }
        ReadOptions options = ReadOptions.of(maps);
        SeasonFiles season = SeasonFiles.of(paths, options, tails);
        List<AuditedFlight> flights = new ArrayList<>();
        for (Path path : season.inOrder()) {
            try (SourceFile source = season.open(path)) {
                for (Optional<RawRows> rows = source.nextBatch(500); rows.isPresent(); rows = source.nextBatch(500)) {
                    rows.get().parse().forEach(row -> take(row, flights));
                }
                assertThat(source.problems()).isEmpty();
            }
        }
        return flights;
    }

    private static void take(ParsedRow row, List<AuditedFlight> flights) {
        if (row instanceof ParsedRow.Accepted accepted) {
            flights.add(RowAuditor.audit(accepted.loading(), configuration.policy()));
        } else {
            assertThat(row).isInstanceOf(ParsedRow.Item.class);
        }
    }

    /** In every style, as text and as a workbook. */
    private List<List<AuditedFlight>> everyWay(FormFiles... tables) throws IOException {
        List<List<AuditedFlight>> ways = new ArrayList<>();
        for (FormStyle style : FormStyle.values()) {
            for (boolean workbook : new boolean[] {false, true}) {
                List<AuditedFlight> flights = read(folder, style, workbook, tables);
                assertThat(flights).as(style + " " + workbook).hasSize(FLIGHTS);
                ways.add(flights);
            }
        }
        return ways;
    }

    /** All that is printed of a flight. */
    private static List<Object> printed(AuditedFlight flight) {
        LoadSummary summary = new LoadSummary(flight, true);
        return Arrays.asList(
                flight.loading().flight(),
                summary.title(),
                summary.facts(),
                summary.status(),
                summary.states(),
                summary.limits(),
                summary.places(),
                summary.takeoffTrim(),
                summary.landingTrim(),
                summary.findings());
    }

    private static void assertSame(List<AuditedFlight> flights, List<AuditedFlight> expected) {
        for (int i = 0; i < expected.size(); i++) {
            assertThat(printed(flights.get(i)))
                    .as("seed " + SEED + ", flight " + i)
                    .isEqualTo(printed(expected.get(i)));
            MassMoment takeoff = flights.get(i).balance().takeoff();
            MassMoment wanted = expected.get(i).balance().takeoff();
            assertThat(takeoff.massKg()).isEqualTo(wanted.massKg(), within(1e-8));
            assertThat(takeoff.armM()).isEqualTo(wanted.armM(), within(1e-11));
        }
    }

    private static void assertZeroFuel(List<AuditedFlight> flights, boolean byRow) {
        for (int i = 0; i < flights.size(); i++) {
            MassMoment state = flights.get(i).balance().zeroFuel().orElseThrow();
            MassMoment wanted = known.get(i).zeroFuel(byRow);
            assertThat(state.massKg()).as("flight " + i).isEqualTo(wanted.massKg(), within(1e-8));
            assertThat(state.armM()).as("flight " + i).isEqualTo(wanted.armM(), within(1e-11));
        }
    }

    @Test
    void detailInColumnsAgreesWithDecimalSumsOfEveryPersonAndBag() {
        assertZeroFuel(detail, false);
        assertThat(detail).allMatch(flight -> flight.assumed().isEmpty());
        assertThat(detail)
                .extracting(flight -> flight.assessment().status())
                .containsAnyOf(org.steelyard.check.result.Status.BREACHED, org.steelyard.check.result.Status.CLEAN);
    }

    @Test
    void detailInColumnsAgreesInAllStylesWithAndWithoutTotalsBesideIt() throws IOException {
        for (List<AuditedFlight> way : everyWay(writer.detail())) {
            assertSame(way, detail);
        }
        for (List<AuditedFlight> way : everyWay(writer.detailWithTotals())) {
            assertSame(way, detail);
        }
    }

    @Test
    void detailAsItemsAgreesWithDetailInColumns() throws IOException {
        for (List<AuditedFlight> way : everyWay(writer.bare(), writer.items(FormWriter.Detail.ZONES))) {
            assertSame(way, detail);
        }
    }

    @Test
    void seatRowsAgreeWithTheSumsAtTheirOwnArms() throws IOException {
        List<List<AuditedFlight>> ways = everyWay(writer.bare(), writer.items(FormWriter.Detail.ROWS));
        assertZeroFuel(ways.get(0), true);
        double greatestM = 0;
        for (List<AuditedFlight> way : ways) {
            assertSame(way, ways.get(0));
        }
        for (int i = 0; i < FLIGHTS; i++) {
            MassMoment byRow = ways.get(0).get(i).balance().takeoff();
            MassMoment byZone = detail.get(i).balance().takeoff();
            assertThat(byRow.massKg()).isEqualTo(byZone.massKg(), within(1e-8));
            greatestM = Math.max(greatestM, Math.abs(byRow.armM() - byZone.armM()));
        }
        assertThat(greatestM).as("what the rows' own arms change").isGreaterThan(0.005);
    }

    @Test
    void totalsInColumnsAndAsItemsAgreeAndKeepTheMassesOfTheDetail() throws IOException {
        List<List<AuditedFlight>> ways = new ArrayList<>(everyWay(writer.totals()));
        ways.addAll(everyWay(writer.bare(), writer.items(FormWriter.Detail.TOTALS)));
        for (List<AuditedFlight> way : ways) {
            assertSame(way, ways.get(0));
        }
        for (int i = 0; i < FLIGHTS; i++) {
            AuditedFlight flight = ways.get(0).get(i);
            for (Phase phase : Phase.values()) {
                assertThat(flight.balance().state(phase).map(MassMoment::massKg).map(Math::round))
                        .isEqualTo(detail.get(i)
                                .balance()
                                .state(phase)
                                .map(MassMoment::massKg)
                                .map(Math::round));
            }
            assertThat(flight.assumed()).containsExactly(LoadPart.PASSENGERS, LoadPart.HOLDS, LoadPart.FUEL);
        }
    }

    @Test
    void eachPartIsAssumedOnItsOwn() throws IOException {
        List<List<AuditedFlight>> zones = everyWay(writer.zonesAndTotals());
        List<List<AuditedFlight>> holds = everyWay(writer.holdsAndTotals());
        for (int way = 0; way < zones.size(); way++) {
            assertSame(zones.get(way), zones.get(0));
            assertSame(holds.get(way), holds.get(0));
        }
        assertThat(zones.get(0)).allMatch(flight -> flight.assumed().equals(List.of(LoadPart.HOLDS, LoadPart.FUEL)));
        assertThat(holds.get(0)).allMatch(flight -> flight.assumed().equals(List.of(LoadPart.PASSENGERS)));
        for (int i = 0; i < FLIGHTS; i++) {
            assertThat(zones.get(0)
                            .get(i)
                            .balance()
                            .distribution()
                            .orElseThrow()
                            .zoneMomentKgM()
                            .sum())
                    .isEqualTo(
                            detail.get(i)
                                    .balance()
                                    .distribution()
                                    .orElseThrow()
                                    .zoneMomentKgM()
                                    .sum(),
                            within(1e-6));
            assertThat(holds.get(0)
                            .get(i)
                            .balance()
                            .distribution()
                            .orElseThrow()
                            .holdKg()
                            .toArray())
                    .containsExactly(
                            detail.get(i)
                                    .balance()
                                    .distribution()
                                    .orElseThrow()
                                    .holdKg()
                                    .toArray(),
                            within(1e-9));
        }
    }

    /** All that does not need the load itself: states from zero fuel on, trim, and what is found of them. */
    @Test
    void zeroFuelStatesWithFuelAgreeFromThereOn() throws IOException {
        for (List<AuditedFlight> way : everyWay(writer.zeroFuelStates())) {
            for (int i = 0; i < FLIGHTS; i++) {
                LoadSummary summary = new LoadSummary(way.get(i), true);
                LoadSummary wanted = new LoadSummary(detail.get(i), true);
                assertThat(summary.states())
                        .isEqualTo(wanted.states().subList(1, wanted.states().size()));
                assertThat(summary.takeoffTrim()).isEqualTo(wanted.takeoffTrim());
                assertThat(summary.landingTrim()).isEqualTo(wanted.landingTrim());
                assertThat(of(way.get(i), Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING))
                        .isEqualTo(of(detail.get(i), Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING));
            }
        }
    }

    @Test
    void takeoffStatesAloneAgreeInTheirStateAndTrim() throws IOException {
        FormFiles states =
                writer.takeoffStates(detail.stream().map(AuditedFlight::balance).toList());
        for (List<AuditedFlight> way : everyWay(states)) {
            for (int i = 0; i < FLIGHTS; i++) {
                LoadSummary summary = new LoadSummary(way.get(i), true);
                LoadSummary wanted = new LoadSummary(detail.get(i), true);
                assertThat(summary.states()).hasSize(1).allMatch(wanted.states()::contains);
                assertThat(summary.takeoffTrim()).isEqualTo(wanted.takeoffTrim());
                assertThat(of(way.get(i), Phase.TAKEOFF)).containsAll(of(detail.get(i), Phase.TAKEOFF));
            }
        }
    }

    /** Findings of some phases in words. */
    private static List<String> of(AuditedFlight flight, Phase... phases) {
        List<String> sentences = new ArrayList<>();
        for (Finding finding : flight.assessment().findings()) {
            if (List.of(phases).contains(finding.phase())) {
                sentences.add(org.steelyard.check.text.FindingText.sentence(finding, type));
            }
        }
        return sentences;
    }
}
