package org.steelyard.read.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.loading.CrewStationLoad;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LastMinuteChange.Part;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.season.SourceFile;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.samples.Plain;

/** Last-minute changes, schemes of standard masses, crew by station and actual masses of bags in columns of a row. */
class ChangesAndSchemesTest {

    private static final MassScheme WINTER = new MassScheme("winter", "invented", 95, 77, 90, 40, 0, 15, 90, 80);
    private static final MassScheme LIGHT = new MassScheme("light", "invented", 80, 60, 70, 30, 1, 10, 80, 70);
    private static final Tails TAILS = Tails.of(
            List.of(
                    Fixtures.TWIN_TAIL,
                    new Tail("SX-OWN", Fixtures.TWIN, MassMoment.at(22_000, 11), Optional.of(LIGHT))),
            List.of(WINTER, LIGHT, Fixtures.TWIN.cabin().scheme()));

    private static final ColumnMap MAP = Fixtures.with(
            Fixtures.MAP,
            change("LMC pax A", "A", PassengerCategory.ADULT),
            change("LMC children", "", PassengerCategory.CHILD),
            change("LMC infants B", "B", PassengerCategory.INFANT),
            Fixtures.rule("LMC hold 1", Field.HOLD_MASS_CHANGE, "1", ColumnUnit.LB),
            Fixtures.rule("LMC load", Field.HOLD_MASS_CHANGE, "", ColumnUnit.KG),
            Fixtures.rule("LMC bags 2", Field.HOLD_BAGS_CHANGE, "2", ColumnUnit.NONE),
            Fixtures.rule("LMC fuel", Field.FUEL_CHANGE, "", ColumnUnit.LITRE),
            Fixtures.rule("LMC left", Field.FUEL_CHANGE, "left", ColumnUnit.KG),
            Fixtures.text("Masses", Field.SCHEME),
            Fixtures.rule("Bags 2 kg", Field.BAG_MASS, "2", ColumnUnit.KG),
            Fixtures.rule("Bags kg", Field.BAG_MASS, "", ColumnUnit.KG),
            Fixtures.rule("Cockpit", Field.CREW, "cockpit", ColumnUnit.NONE),
            Fixtures.rule("Cockpit kg", Field.CREW_MASS, "cockpit", ColumnUnit.KG));

    @TempDir
    private Path folder;

    private static ColumnRule change(String heading, String place, PassengerCategory category) {
        return new ColumnRule(heading, Field.PASSENGERS_CHANGE, place, category, ColumnUnit.NONE, "", false);
    }

    private ParsedRow read(ColumnMap map, String... cells) throws IOException {
        Map<String, String> row = new LinkedHashMap<>();
        map.columns().forEach(rule -> row.put(rule.heading(), ""));
        row.putAll(Map.of("Flight", "T1", "Date", "2024-05-01", "Tail", "SX-BAA", "Taxi", "100", "Trip", "1500"));
        for (String cell : cells) {
            String[] parts = cell.split("=", -1);
            assertThat(row.put(parts[0], parts[1])).as(parts[0]).isNotNull();
        }
        Path file = Files.writeString(
                folder.resolve("s.csv"),
                String.join(";", row.keySet()) + "\n" + String.join(";", row.values()),
                StandardCharsets.UTF_8);
        try (SourceFile source = SourceFile.open(file, ReadOptions.of(List.of(map)), TAILS)) {
            List<ParsedRow> rows = source.nextBatch(10).orElseThrow().parse();
            assertThat(rows).hasSize(1);
            return rows.get(0);
        }
    }

    private Loading loading(String... cells) throws IOException {
        ParsedRow row = read(MAP, cells);
        assertThat(reasons(row)).isEmpty();
        return ((ParsedRow.Accepted) row).loading();
    }

    private static List<String> reasons(ParsedRow row) {
        return row instanceof ParsedRow.Rejected rejected
                ? rejected.row().problems().stream().map(InputProblem::detail).toList()
                : List.of();
    }

    @Test
    void changesCountAtStandardMassWithTheirSigns() throws IOException {
        Loading loading = loading(
                "Pax A=10",
                "Hold 1=500",
                "Bags 2=5",
                "Fuel=3000",
                "LMC pax A=-2",
                "LMC children=1",
                "LMC infants B=1",
                "LMC hold 1=100",
                "LMC bags 2=-3",
                "LMC fuel=-100",
                "LMC left=250",
                "LMC load=0");
        assertThat(loading.change().parts())
                .containsExactlyInAnyOrder(
                        new Part(LoadPart.PASSENGERS, 0, -2, -2, -168),
                        new Part(LoadPart.PASSENGERS, LastMinuteChange.ANYWHERE, 1, 1, 35),
                        new Part(LoadPart.PASSENGERS, 1, 1, 0, 0),
                        new Part(LoadPart.HOLDS, 0, 0, 0, 45.359237),
                        new Part(LoadPart.HOLDS, 1, 0, 0, -39),
                        new Part(LoadPart.FUEL, LastMinuteChange.ANYWHERE, 0, 0, -80),
                        new Part(LoadPart.FUEL, 0, 0, 0, 250));
        assertThat(loading.change().persons()).isEqualTo(4);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "Pax A=1|LMC pax A=-2|LMC pax A: more passengers would go than is aboard there (value '-2'",
                "Pax=1|LMC pax A=-2|LMC pax A: more passengers would go than is aboard there (value '-2'",
                "Hold 1=40|LMC hold 1=-100|LMC hold 1: more load in the hold would go than is aboard there (value '-100'",
                "Load=40|LMC load=-41|LMC load: more load in the hold would go than is aboard there (value '-41'",
                "Pax A=1|LMC left=-5000|LMC left: more fuel would go than is aboard there (value '-5000'"
            })
    void moreCannotGoThanIsThere(String load, String change, String reason) throws IOException {
        assertThat(reasons(read(MAP, load, "Fuel=3000", change)))
                .containsExactly(
                        reason + "; expected at most what is aboard; passengers and bags count at standard mass)");
    }

    @Test
    void aChangeIsReadAsStrictlyAsAnyNumber() throws IOException {
        assertThat(reasons(read(MAP, "Pax A=9", "Fuel=3000", "LMC pax A=-1.5", "LMC load=-2000000", "LMC bags 2=one")))
                .containsExactly(
                        "LMC pax A: not a whole number (value '-1.5'; expected a whole number from -10,000 to 10,000)",
                        "LMC load: out of range (value '-2000000'; expected a mass from -1,000,000 to 1,000,000 kg)",
                        "LMC bags 2: not a number (value 'one'; expected a whole number from -10,000 to 10,000)");
    }

    @Test
    void aGivenTakeoffStateDoesNotChangeAnyMore() throws IOException {
        assertThat(reasons(read(MAP, "TOM=36000", "TOCG=22", "Taxi=", "Trip=", "LMC load=100")))
                .containsExactly("LMC load: both last-minute change of mass in holds ('LMC load') and take-off mass"
                        + " ('TOM') are given (value '100'; expected only one of them; the heading map may declare the"
                        + " other as extra or ignored)");
    }

    @Test
    void theSchemeIsTheRowsElseTheMapsElseTheTailsElseTheTypes() throws IOException {
        assertThat(loading("Pax A=3", "Fuel=3000").scheme())
                .isEqualTo(Fixtures.TWIN.cabin().scheme());
        assertThat(loading("Pax A=3", "Fuel=3000", "Tail=SX-OWN").scheme()).isEqualTo(LIGHT);
        assertThat(loading("Pax A=3", "Fuel=3000", "Tail=SX-OWN", "Masses=Winter")
                        .scheme())
                .isEqualTo(WINTER);
        ColumnMap winter = Plain.columnMap(
                "winter",
                List.of(),
                "",
                Optional.empty(),
                false,
                DigitGrouping.NONE,
                ColumnMap.UnknownColumns.KEEP,
                MAP.columns(),
                SourceForm.FLIGHTS,
                "winter",
                ColumnMap.MergedCells.FIRST_ROW);
        assertThat(((ParsedRow.Accepted) read(winter, "Pax A=3", "Fuel=3000", "Tail=SX-OWN"))
                        .loading()
                        .scheme())
                .isEqualTo(WINTER);
        assertThat(reasons(read(MAP, "Pax A=3", "Fuel=3000", "Masses=summer")))
                .containsExactly(
                        "Masses: unknown scheme of standard masses (value 'summer'; expected one of light, test,"
                                + " winter, or blank)");
    }

    @Test
    void infantsInTotalNeedAZoneWhereTheSchemeGivesThemAMass() throws IOException {
        assertThat(reasons(read(MAP, "Pax A=3", "Fuel=3000", "Masses=light", "Infants=1")))
                .containsExactly("Infants: infants in total, but other figures of the same load by place"
                        + " (value '1'; expected infants by zone, or everything in total)");
    }

    @Test
    void theActualMassOfBagsTakesThePlaceOfTheirStandardMass() throws IOException {
        Load.ByPlace byPlace =
                (Load.ByPlace) loading("Pax A=3", "Fuel=3000", "Bags 2=10", "Bags 2 kg=142.5", "Hold 2=50")
                        .load();
        assertThat(byPlace.holds().get(1)).isEqualTo(new HoldLoad(192.5, 0));
        Load.Totals totals = (Load.Totals)
                loading("Pax=3", "Fuel=3000", "Bags=10", "Bags kg=142.5").load();
        assertThat(totals.hold()).isEqualTo(new HoldLoad(142.5, 0));
        assertThat(reasons(read(MAP, "Pax A=3", "Fuel=3000", "Bags 2=10", "Bags 2 kg=0")))
                .containsExactly("Bags 2 kg: an actual mass of 0 for 10 bags"
                        + " (value '0'; expected their mass, or a blank cell for standard masses)");
    }

    @Test
    void crewByStationStandsInPlaceOfTheStandardCrewOfItsRole() throws IOException {
        Loading loading = loading("Pax A=3", "Fuel=3000", "Cockpit=3", "Cockpit kg=276", "Crew=3", "Cabin crew=1");
        assertThat(loading.crew().at(0)).hasValue(new CrewStationLoad(3, OptionalDouble.of(276)));
        assertThat(loading.crew().at(1)).isEmpty();
        assertThat(loading.crew().flightCrew()).isEmpty();
        assertThat(loading.crew().cabinCrew()).isEqualTo(OptionalInt.of(1));
        assertThat(reasons(read(MAP, "Pax A=3", "Fuel=3000", "Cockpit=3", "Crew=2", "Crew kg=200")))
                .containsExactly(
                        "Crew: differs from the flight crew by station, who are 3"
                                + " (value '2'; expected the same number, or one of the two blank)",
                        "Crew kg: both flight crew's mass ('Crew kg') and crew by station ('Cockpit') are given"
                                + " (value '200'; expected only one of them; the heading map may declare the other as"
                                + " extra or ignored)");
        assertThat(reasons(read(MAP, "Pax A=3", "Fuel=3000", "Cockpit kg=200")))
                .containsExactly("Cockpit kg: crew of 0 with a mass of more than 0 at station cockpit"
                        + " (value '200'; expected count and mass of those who sit there, or no mass for standard"
                        + " masses)");
    }

    @Test
    void everyColumnOfTheMapIsTriedHere() {
        List<Field> changes = new ArrayList<>(List.of(Field.values()));
        changes.removeIf(field -> !field.isChange());
        assertThat(MAP.columns()).extracting(ColumnRule::field).containsAll(changes);
    }
}
