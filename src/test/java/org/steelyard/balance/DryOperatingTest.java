package org.steelyard.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Crew of 100 kg each: 2 on the deck at 2 m, 1 jump seat at 4 m; cabin crew 2 at 6 m and 3 at 30 m. */
class DryOperatingTest {

    private static final MassScheme SCHEME = SampleJet.type().cabin().scheme();
    private static final List<CrewStation> STATIONS = List.of(
            new CrewStation("deck", CrewRole.FLIGHT, 2, 2),
            new CrewStation("front", CrewRole.CABIN, 6, 2),
            new CrewStation("jump", CrewRole.FLIGHT, 4, 1),
            new CrewStation("back", CrewRole.CABIN, 30, 3));

    private static Tail tail(List<CrewStation> stations, List<Pantry> pantries) {
        AircraftType jet = SampleJet.type();
        Cabin cabin = new Cabin(List.of(), stations, 0, 0, pantries, jet.cabin().scheme());
        AircraftType type = Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                cabin,
                List.of(),
                List.of(),
                jet.fuel(),
                jet.envelopes(),
                List.of());
        return Plain.tail("TEST-1", type, MassMoment.at(40_000, 17));
    }

    private static MassMoment crewOnly(int flight, int cabin, OptionalDouble flightKg) {
        Crew crew = new Crew(OptionalInt.of(flight), OptionalInt.of(cabin), flightKg, "");
        return DryOperating.of(tail(STATIONS, List.of()), SCHEME, crew).minus(MassMoment.at(40_000, 17));
    }

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0, 0",
        "1, 0, 100, 200",
        "3, 0, 300, 800",
        "4, 0, 400, 1200",
        "0, 2, 200, 1200",
        "0, 4, 400, 7200",
        "0, 6, 600, 13200",
        "2, 3, 500, 4600"
    })
    void crewFillTheirStationsInOrderAndTooManyCountAtTheLast(int flight, int cabin, double massKg, double momentKgM) {
        MassMoment crew = crewOnly(flight, cabin, OptionalDouble.empty());
        assertThat(crew.massKg()).isCloseTo(massKg, within(1e-9));
        assertThat(crew.momentKgM()).isCloseTo(momentKgM, within(1e-9));
    }

    @Test
    void theActualMassOfTheFlightCrewTakesThePlaceOfTheSchemes() {
        MassMoment two = crewOnly(2, 0, OptionalDouble.of(180));
        assertThat(two.massKg()).isCloseTo(180, within(1e-9));
        assertThat(two.momentKgM()).isCloseTo(360, within(1e-9));
        MassMoment three = crewOnly(3, 1, OptionalDouble.of(240));
        assertThat(three.massKg()).isCloseTo(340, within(1e-9));
        assertThat(three.momentKgM()).isCloseTo(80 * (2 + 2 + 4) + 600, within(1e-9));
        MassMoment nobodyButMass = crewOnly(0, 0, OptionalDouble.of(90));
        assertThat(nobodyButMass.momentKgM()).isCloseTo(180, within(1e-9));
    }

    @Test
    void crewWithoutAnyStationOfTheirRoleIsRefused() {
        List<CrewStation> deckOnly = List.of(STATIONS.get(0));
        Crew crew = new Crew(OptionalInt.of(1), OptionalInt.of(1), OptionalDouble.empty(), "");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DryOperating.of(tail(deckOnly, List.of()), SCHEME, crew))
                .withMessageContaining("no station for cabin crew");
    }

    @Test
    void thePantryGoesByItsCodeAndTheFirstIsTheStandard() {
        List<Pantry> pantries =
                List.of(new Pantry("full", MassMoment.at(500, 20)), new Pantry("dry", MassMoment.at(200, 10)));
        Tail tail = tail(STATIONS, pantries);
        assertThat(DryOperating.of(tail, SCHEME, pantry("")).massKg()).isEqualTo(40_500);
        assertThat(DryOperating.of(tail, SCHEME, pantry("dry"))).isEqualTo(new MassMoment(40_200, 682_000));
        assertThat(DryOperating.of(tail, SCHEME, pantry("full")).momentKgM()).isEqualTo(690_000);
        assertThat(DryOperating.of(tail(STATIONS, List.of()), SCHEME, pantry(""))
                        .massKg())
                .isEqualTo(40_000);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> DryOperating.of(tail, SCHEME, pantry("none")))
                .withMessageContaining("no pantry 'none'");
    }

    private static Crew pantry(String code) {
        return new Crew(OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty(), code);
    }
}
