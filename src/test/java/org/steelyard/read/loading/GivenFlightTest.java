package org.steelyard.read.loading;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.Tail;
import org.steelyard.read.loading.GivenFlight.Given;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.row.Tails;
import org.steelyard.samples.SampleJet;

class GivenFlightTest {

    private static final Tail JET = SampleJet.loaded().loading().tail();
    private static final Tails FLEET = Tails.of(List.of(JET));

    private static List<Given> given(String... pairs) {
        List<Given> given = new ArrayList<>(List.of(new Given("tail", JET.registration())));
        Stream.of(pairs).map(pair -> pair.split("=", 2)).forEach(pair -> given.add(new Given(pair[0], pair[1])));
        return given;
    }

    private static Loading accepted(String... pairs) {
        ParsedRow row = GivenFlight.read(given(pairs), FLEET);
        assertThat(row).isInstanceOf(ParsedRow.Accepted.class);
        return ((ParsedRow.Accepted) row).loading();
    }

    private static List<String> refused(String... pairs) {
        ParsedRow row = GivenFlight.read(given(pairs), FLEET);
        assertThat(row).isInstanceOf(ParsedRow.Rejected.class);
        return ((ParsedRow.Rejected) row)
                .row().problems().stream().map(InputProblem::detail).toList();
    }

    @ParameterizedTest
    @CsvSource({
        "55t, 25%",
        "55 t, 25 % MAC",
        "55000kg, 17m",
        "121254.2441lb, 17000 mm",
        "55000 KG, 669.2913in",
        "55t, 40 index"
    })
    void aStateIsReadInAnyUnitWithOrWithoutABlank(String mass, String cg) {
        Loading loading = accepted("flaps=5", "takeoff-mass=" + mass, "takeoff-cg=" + cg);
        assertThat(loading.load()).isInstanceOfSatisfying(Load.TakeoffGiven.class, state -> {
            assertThat(state.takeoff().massKg()).isCloseTo(55_000, within(0.01));
            assertThat(state.takeoff().armM()).isCloseTo(17, within(1e-4));
        });
    }

    @Test
    void aWholeLoadingIsReadByPlaceAndCategory() {
        Loading loading = accepted(
                "passengers.A=10",
                "passengers.A.child=2",
                "passengers.B=20",
                "hold-mass.1=800kg",
                "fuel.left=3000kg",
                "fuel.right=3t",
                "taxi-fuel=200kg",
                "trip-fuel=5000kg",
                "recorded-trim=1.1DN");
        Load.ByPlace load = (Load.ByPlace) loading.load();
        assertThat(load.zones().get(0).passengers().adult()).isEqualTo(10);
        assertThat(load.zones().get(0).passengers().child()).isEqualTo(2);
        assertThat(load.holds().get(0).massKg()).isEqualTo(800);
        assertThat(loading.fuel().tripKg()).isEqualTo(5000);
        assertThat(loading.recordedTrimUnits()).hasValue(-1.1);
        assertThat(((Fuel.ByTank) loading.fuel()).tanksKg().sum()).isEqualTo(6000);
    }

    @Test
    void theDensityOfTheFlightIsThatOfItsTanks() {
        Loading loading = accepted(
                "passengers=30", "fuel.left=1000L", "fuel.right=800kg", "trip-fuel=1t", "fuel-density=0.75kg/L");
        assertThat(loading.fuel().densityKgPerL()).hasValue(0.75);
        assertThat(loading.tanks().densityKgPerL()).isEqualTo(0.75);
        assertThat(((Fuel.ByTank) loading.fuel()).tanksKg().at(0)).isEqualTo(750);
        assertThat(accepted("passengers=30", "fuel=6t", "trip-fuel=5t").tanks())
                .isSameAs(loading.type().fuel());
    }

    @Test
    void aCategoryWithoutAPlaceIsInTotal() {
        Loading loading = accepted("passengers=30", "passengers.infant=2", "fuel=6t", "trip-fuel=5t");
        assertThat(loading.load())
                .isInstanceOfSatisfying(
                        Load.Totals.class,
                        totals -> assertThat(totals.passengers().infant()).isEqualTo(2));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "takeoff-mass=55 | takeoff-mass: the unit is missing (value '55'; expected a number in one of kg, lb, t)",
                "takeoff-mass=55x | takeoff-mass: unknown unit 'x' (value '55x'; expected a number in one of kg, lb, t)",
                "takeoff-mass=5,5t | takeoff-mass: not a number",
                "nonsense=3 | nonsense: unknown name (value '3'; expected one of flight, date, tail",
                "hold-mass.1.x=3kg | hold-mass.1.x: unknown passenger category 'x'",
                "hold-mass.9=3kg | hold-mass.9: type SAMPLE has no hold 9",
            })
    void whatDoesNotFitIsNamedWithItsReason(String pair, String message) {
        assertThat(refused("takeoff-cg=25%", pair))
                .anySatisfy(text -> assertThat(text).startsWith(message));
    }

    @Test
    void aValueThatCannotBeReadIsNotMissingAsWell() {
        assertThat(refused("takeoff-cg=25%", "takeoff-mass=55")).hasSize(1);
    }

    @Test
    void oneNameGivenTwiceIsRefused() {
        assertThat(refused("takeoff-cg=25%", "takeoff-mass=55t", "takeoff-mass=56t"))
                .anySatisfy(text -> assertThat(text).contains("twice"));
    }

    @Test
    void oneValueAloneIsCheckedForItsOwnFaultsOnly() {
        assertThat(GivenFlight.faults(new Given("trip-fuel", "5t"), JET.registration(), FLEET))
                .isEmpty();
        assertThat(GivenFlight.faults(new Given("trip-fuel", "5"), JET.registration(), FLEET))
                .hasSize(1);
        assertThat(GivenFlight.faults(new Given("passengers.A", "2.5"), JET.registration(), FLEET))
                .extracting(InputProblem::reason)
                .containsExactly("not a whole number");
        assertThat(GivenFlight.faults(new Given("tail", "NO-ONE"), "", FLEET)).hasSize(1);
    }
}
