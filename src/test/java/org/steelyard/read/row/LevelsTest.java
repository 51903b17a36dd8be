package org.steelyard.read.row;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.read.row.Fixtures.MAP;

import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.loading.RowParser;
import org.steelyard.read.season.ReadAll;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/** The level at which a row gives its load follows from its filled cells. */
class LevelsTest {

    @TempDir
    private Path folder;

    /** Reads one row of a file that has all columns, with the cells given as Heading=value. */
    private ReadAll read(ColumnMap map, String... cells) throws IOException {
        Map<String, String> row = new LinkedHashMap<>();
        map.columns().forEach(rule -> row.put(rule.heading(), ""));
        row.putAll(Map.of("Flight", "T1", "Date", "2024-05-01", "Tail", "SX-BAA"));
        for (String cell : cells) {
            String[] parts = cell.split("=", -1);
            assertThat(row.put(parts[0], parts[1])).as(parts[0]).isNotNull();
        }
        return ReadAll.text(
                folder, "s.csv", String.join(";", row.keySet()) + "\n" + String.join(";", row.values()), map);
    }

    private ReadAll withFuel(String... cells) throws IOException {
        return withFuel(MAP, cells);
    }

    private ReadAll withFuel(ColumnMap map, String... cells) throws IOException {
        String[] all = java.util.Arrays.copyOf(cells, cells.length + 3);
        all[cells.length] = "Fuel=3000";
        all[cells.length + 1] = "Taxi=100";
        all[cells.length + 2] = "Trip=1500";
        return read(map, all);
    }

    private static Load load(ReadAll read) {
        assertThat(read.reasons()).isEmpty();
        return read.accepted().get(0).load();
    }

    private static List<String> messages(ReadAll read) {
        return read.reasons().stream()
                .map(reason -> reason.substring("s.csv:2:".length()))
                .toList();
    }

    @Test
    void oneFilledPlaceMakesItALoadByPlaceWhoseOtherPlacesAreEmpty() throws IOException {
        Load.ByPlace load = (Load.ByPlace) load(withFuel("Hold 2=150"));
        assertThat(load.holds()).containsExactly(HoldLoad.EMPTY, new HoldLoad(150, 0), HoldLoad.EMPTY);
        assertThat(load.zones()).allMatch(zone -> zone.passengers().equals(Passengers.NONE));
    }

    @Test
    void aZeroInOnePlaceIsAnEmptyAircraft() throws IOException {
        assertThat(((Load.ByPlace) load(withFuel("Pax A=0"))).zones()).hasSize(2);
    }

    @Test
    void totalsAloneAreTotals() throws IOException {
        assertThat(load(withFuel("Pax=61", "Infants=2", "Load=900", "Bags=12")))
                .isEqualTo(
                        new Load.Totals(new Passengers(0, 0, 61, 0, 2), OptionalDouble.empty(), new HoldLoad(900, 12)));
        assertThat(load(withFuel("Pax kg=5000")))
                .isEqualTo(new Load.Totals(Passengers.NONE, OptionalDouble.of(5000), HoldLoad.EMPTY));
    }

    @Test
    void totalsThatAgreeWithThePlacesAreACheck() throws IOException {
        assertThat(load(withFuel(
                        "Pax A=10", "Pax B=20", "Children B=5", "Pax=35", "Hold 1=100.4", "Hold 3=50.3", "Load=151")))
                .isInstanceOf(Load.ByPlace.class);
    }

    @ParameterizedTest
    @CsvSource({"35, ''", "35, 2", "37, ''", "37, 2"})
    void aTotalOfPassengersMayCountTheInfantsOrNot(String total, String infants) throws IOException {
        assertThat(load(withFuel("Pax A=30", "Children B=5", "Infants B=2", "Pax=" + total, "Infants=" + infants)))
                .isInstanceOf(Load.ByPlace.class);
    }

    @Test
    void totalsThatDifferFromThePlacesContradictThem() throws IOException {
        assertThat(messages(withFuel("Pax A=10", "Pax B=20", "Pax=31", "Hold 1=100", "Hold 3=50", "Load=160")))
                .containsExactly(
                        "Pax: differs from the sum of passengers by zone ('Pax A'), which is 30"
                                + " (value '31'; expected the same sum, or one of the two blank)",
                        "Load: differs from the sum of mass by hold ('Hold 1'), which is 150 kg"
                                + " (value '160'; expected the same sum, or one of the two blank)");
        assertThat(messages(withFuel("Bags 2=3", "Bags=4", "Pax A kg=900", "Pax kg=950")))
                .containsExactly(
                        "Pax kg: differs from the sum of passengers' mass by zone ('Pax A kg'), which is 900 kg"
                                + " (value '950'; expected the same sum, or one of the two blank)",
                        "Bags: differs from the sum of bags by hold ('Bags 2'), which is 3"
                                + " (value '4'; expected the same sum, or one of the two blank)");
    }

    @Test
    void passengersAndHoldsAreEachByPlaceOrInTotal() throws IOException {
        Load.ByZone byZone = (Load.ByZone) load(withFuel("Pax A=10", "Load=300", "Bags=4"));
        assertThat(byZone.zones().get(0).passengers()).isEqualTo(Passengers.adults(10));
        assertThat(byZone.hold()).isEqualTo(new HoldLoad(300, 4));
        Load.ByHold byHold = (Load.ByHold) load(withFuel("Pax=50", "Infants=1", "Pax kg=4100", "Hold 2=300"));
        assertThat(byHold.passengers()).isEqualTo(new Passengers(0, 0, 50, 0, 1));
        assertThat(byHold.passengersKg()).hasValue(4100);
        assertThat(byHold.holds()).containsExactly(HoldLoad.EMPTY, new HoldLoad(300, 0), HoldLoad.EMPTY);
        assertThat(load(withFuel("Pax A=10", "Load=0"))).isInstanceOf(Load.ByPlace.class);
        assertThat(load(withFuel("Pax=0", "Hold 1=10"))).isInstanceOf(Load.ByPlace.class);
    }

    @Test
    void infantsInTotalWithoutMassOfTheirOwnCountAmongThePassengersByZone() throws IOException {
        Load.ByPlace load = (Load.ByPlace) load(withFuel("Pax B=10", "Infants=2"));
        assertThat(load.zones().get(1).passengers()).isEqualTo(new Passengers(0, 0, 10, 0, 2));
        assertThat(messages(withFuel("Pax B=0", "Infants=2")))
                .containsExactly("Infants: infants, but nobody on a seat (value '2'; expected a blank cell or 0)");
    }

    @Test
    void aTotalCannotStandBesideOtherFiguresByPlaceOfTheSamePart() throws IOException {
        assertThat(messages(withFuel("Pax A=10", "Pax kg=900", "Bags 2=3", "Load=300")))
                .containsExactly(
                        "Pax kg: passengers' mass in total, but other figures of the same load by place"
                                + " (value '900'; expected passengers' mass by zone, or everything in total)",
                        "Load: baggage and cargo in total, but other figures of the same load by place"
                                + " (value '300'; expected mass by hold, or everything in total)");
    }

    @Test
    void anActualMassOfNothingForSomebodyIsAContradiction() throws IOException {
        assertThat(messages(withFuel("Pax A=10", "Pax A kg=0")))
                .containsExactly("Pax A kg: an actual mass of 0 for 10 passengers by zone ('Pax A')"
                        + " (value '0'; expected their mass, or a blank cell for standard masses)");
        assertThat(messages(withFuel("Pax=10", "Pax kg=0")))
                .containsExactly("Pax kg: an actual mass of 0 for 10 passengers in total ('Pax')"
                        + " (value '0'; expected their mass, or a blank cell for standard masses)");
    }

    /** The chord begins at 10 m and is 4 m long; index = (arm - 11) mass / 1000 + 40. */
    @ParameterizedTest
    @CsvSource({"PERCENT_MAC, 25", "METRE, 11", "MILLIMETRE, 11000", "INCH, 433.0708661417323", "INDEX, 40"})
    void aZeroFuelStateHasItsCgInTheUnitOfItsColumn(ColumnUnit unit, String cg) throws IOException {
        ColumnMap map = Fixtures.with(MAP, Fixtures.rule("ZFCG", Field.ZERO_FUEL_CG, "", unit));
        MassMoment state = ((Load.ZeroFuelGiven) load(withFuel(map, "ZFM=30000", "ZFCG=" + cg))).zeroFuel();
        assertThat(state.massKg()).isEqualTo(30_000);
        assertThat(state.armM()).isEqualTo(11, within(1e-9));
    }

    @Test
    void aTakeoffStateStandsWithoutFuel() throws IOException {
        ReadAll read = read(MAP, "TOM=36000", "TOCG=22.5", "Pax A=0", "Fuel=0");
        assertThat(load(read)).isEqualTo(new Load.TakeoffGiven(MassMoment.at(36_000, 10.9)));
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.NotGiven());
    }

    @Test
    void aCellThatShowsAPercentageHoldsAHundredthOfIt() throws SourceFault {
        TableName name = new TableName("s.xlsx", "Sheet 1");
        RawRow headings = RawRow.ofText(1, "Flight", "Date", "Tail", "TOM", "TOCG");
        RowParser parser = new RowParser(name, Binding.of(MAP, headings, name, false), Fixtures.TAILS);
        CellKind[] kinds = {CellKind.TEXT, CellKind.TEXT, CellKind.TEXT, CellKind.NUMBER, CellKind.PERCENTAGE};
        String[] cells = {"T1", "2026-05-01", "SX-BAA", "36000", "0.225"};
        assertThat(parser.parse(RawRow.of(2, cells, kinds)))
                .isInstanceOfSatisfying(
                        ParsedRow.Accepted.class,
                        row -> assertThat(row.loading().load())
                                .isEqualTo(new Load.TakeoffGiven(MassMoment.at(36_000, 10.9))));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TOM|TOCG|ZFM=30000|take-off mass ('TOM') and zero-fuel mass ('ZFM')",
                "TOM|TOCG|Pax A=3|take-off mass ('TOM') and passengers by zone ('Pax A')",
                "TOM|TOCG|Trip=100|take-off mass ('TOM') and trip fuel ('Trip')",
                "TOM|TOCG|Left=100|take-off mass ('TOM') and fuel by tank ('Left')",
                "ZFM|ZFCG|Load=3|zero-fuel mass ('ZFM') and baggage and cargo in total ('Load')"
            })
    void twoLevelsContradictEachOther(String mass, String cg, String other, String both) throws IOException {
        String[] cells = {mass + "=35000", cg + "=20", other};
        ReadAll read = mass.equals("TOM") ? read(MAP, cells) : withFuel(cells);
        assertThat(messages(read))
                .containsExactly(mass + ": both " + both + " are given (value '35000'; expected only one of them;"
                        + " the heading map may declare the other as extra or ignored)");
    }

    @Test
    void massAndCgOfAStateGoTogether() throws IOException {
        assertThat(messages(withFuel("ZFM=30000")))
                .containsExactly("ZFCG: missing beside zero-fuel mass ('ZFM')"
                        + " (expected zero-fuel CG and zero-fuel mass together)");
        assertThat(messages(read(MAP, "TOCG=25")))
                .containsExactly("TOM: missing beside take-off CG ('TOCG')"
                        + " (expected take-off mass and take-off CG together)");
    }

    @Test
    void aCgMustMakeSenseInAnyUnit() throws IOException {
        assertThat(messages(read(MAP, "TOM=36000", "TOCG=201")))
                .containsExactly("TOCG: out of range (value '201'; expected a CG from -100 to 200 % MAC)");
        ColumnMap map = Fixtures.with(MAP, Fixtures.rule("TOCG", Field.TAKEOFF_CG, "", ColumnUnit.INCH));
        assertThat(messages(read(map, "TOM=36000", "TOCG=25")))
                .containsExactly("TOCG: out of range (value '25'; expected a CG from -100 to 200 % MAC of type twin,"
                        + " in the unit of the column (in))");
        assertThat(load(read(MAP, "TOM=36000", "TOCG=-12"))).isInstanceOf(Load.TakeoffGiven.class);
    }

    @Test
    void aRowWithoutAnyLoadSaysWhatWouldBeAccepted() throws IOException {
        assertThat(read(MAP, "Infants=0").reasons())
                .containsExactly(
                        "s.csv:2: no load is given (expected passengers and holds by place or in total (0 for none),"
                                + " or zero-fuel mass and CG, or take-off mass and CG)",
                        "s.csv:2:Left: no fuel is given (expected fuel by tank or in total at the ramp, 0 for none)",
                        "s.csv:2:Taxi: taxi fuel is missing (expected a mass, 0 for none)",
                        "s.csv:2:Trip: trip fuel is missing (expected a mass, 0 for none)");
    }

    @Test
    void fuelByTankStandsWithATotalThatAgrees() throws IOException {
        ReadAll read = read(MAP, "Pax A=3", "Left=1000.4", "Fuel=1000", "Taxi=0", "Trip=500");
        assertThat(read.accepted().get(0).fuel()).isEqualTo(new Fuel.ByTank(Amounts.of(1000.4, 0), 0, 500));
        assertThat(messages(read(MAP, "Pax A=3", "Left=1000", "Right=900", "Fuel=2000", "Taxi=0", "Trip=500")))
                .containsExactly("Fuel: differs from the sum of fuel by tank ('Left'), which is 1900 kg"
                        + " (value '2000'; expected the same sum, or one of the two blank)");
    }

    @Test
    void aTypeWithoutHoldsTakesNoBaggage() throws IOException {
        assertThat(messages(withFuel("Tail=SX-ONE", "Pax=2", "Load=30")))
                .containsExactly("Load: type single has no holds (value '30'; expected a blank cell or 0)");
    }

    @Test
    void levelsMixInOneFile() throws IOException {
        String headings = "Flight;Date;Tail;Pax A;Pax;ZFM;ZFCG;TOM;TOCG;Fuel;Taxi;Trip\n";
        ReadAll read = ReadAll.text(
                folder,
                "s.csv",
                headings + "1;2024-05-01;SX-BAA;9;;;;;;3000;100;1500\n" + "2;2024-05-01;SX-BAA;;9;;;;;3000;100;1500\n"
                        + "3;2024-05-01;SX-BAA;;;30000;25;;;3000;100;1500\n"
                        + "4;2024-05-01;SX-BAA;;;;;35000;25;;;\n",
                MAP);
        assertThat(read.accepted())
                .extracting(loading -> loading.load().getClass().getSimpleName())
                .containsExactly("ByPlace", "Totals", "ZeroFuelGiven", "TakeoffGiven");
    }
}
