package org.steelyard.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.CrewStationLoad;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.SeatRowLoad;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.SeatRow;
import org.steelyard.model.type.Tail;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Loads of which one part is by place and another in total, seat rows, schemes and crew by station. */
class PartlyGivenLoadTest {

    private static final Policy POLICY = Plain.policy(0, 0, 0, 0, SharingRule.FRONT_FIRST);

    private static ZoneLoad adults(int count) {
        return new ZoneLoad(Passengers.adults(count), OptionalDouble.empty());
    }

    private static Distribution place(Load load) {
        return Balancer.balance(SampleJet.loaded().load(load).loading(), POLICY)
                .distribution()
                .orElseThrow();
    }

    @Test
    void passengersByZoneAreNotAssumedBesideHoldsInTotal() {
        Distribution placed = place(new Load.ByZone(List.of(adults(5), adults(6), adults(7)), new HoldLoad(4000, 100)));
        assertThat(placed.seatedByZone().toArray()).containsExactly(5, 6, 7);
        assertThat(placed.holdKg().toArray()).containsExactly(3000, 2000, 0);
        assertThat(placed.passengersAssumed()).isFalse();
        assertThat(placed.holdsAssumed()).isTrue();
    }

    @Test
    void holdsAreNotAssumedBesidePassengersInTotal() {
        Distribution placed = place(new Load.ByHold(
                Passengers.adults(40),
                OptionalDouble.of(3600),
                List.of(HoldLoad.EMPTY, new HoldLoad(10, 2), HoldLoad.EMPTY)));
        assertThat(placed.seatedByZone().toArray()).containsExactly(30, 10, 0);
        assertThat(placed.zoneKg().toArray()).containsExactly(2700, 900, 0);
        assertThat(placed.holdKg().toArray()).containsExactly(0, 30, 0);
        assertThat(placed.passengersAssumed()).isTrue();
        assertThat(placed.holdsAssumed()).isFalse();
    }

    @Test
    void nothingIsAssumedOfATotalOfNothing() {
        Load nothing = new Load.Totals(Passengers.NONE, OptionalDouble.empty(), HoldLoad.EMPTY);
        assertThat(place(nothing).assumed()).isFalse();
    }

    private static AircraftType typeWith(List<SeatRow> rows) {
        AircraftType jet = SampleJet.type();
        Cabin cabin = jet.cabin();
        List<CabinZone> zones = new ArrayList<>(cabin.zones());
        zones.set(1, new CabinZone("B", "zone B", 17, 30, rows));
        return Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                new Cabin(zones, cabin.crewStations(), 2, 2, cabin.pantries(), cabin.scheme()),
                jet.holds(),
                jet.groups(),
                jet.fuel(),
                jet.envelopes(),
                jet.trimScales());
    }

    private static Loading loading(AircraftType type, Optional<MassScheme> scheme, Crew crew, ZoneLoad zoneB) {
        Loading plain = SampleJet.loaded().loading();
        return Plain.loading(
                plain.origin(),
                plain.flight(),
                new Tail("TEST-1", type, MassMoment.at(40_000, 17), scheme),
                plain.setting(),
                crew,
                new Load.ByPlace(
                        List.of(ZoneLoad.EMPTY, zoneB, ZoneLoad.EMPTY),
                        List.of(HoldLoad.EMPTY, HoldLoad.EMPTY, HoldLoad.EMPTY)),
                plain.fuel(),
                plain.performance(),
                plain.recordedTrimUnits(),
                plain.extras());
    }

    /**
     * Three rows at 16, 17 and 18.5 m: persons of 100 kg, but 350 kg for four in the last row and two of no known row.
     */
    @Test
    void aSeatRowReachesTheMomentAtItsOwnArm() {
        AircraftType type =
                typeWith(List.of(new SeatRow("10", 16, 10), new SeatRow("11", 17, 10), new SeatRow("12", 18.5, 10)));
        ZoneLoad zone = new ZoneLoad(
                Passengers.adults(9),
                OptionalDouble.of(850),
                List.of(new SeatRowLoad(0, 3, 300), new SeatRowLoad(2, 4, 350)));
        Balance balance = Balancer.balance(loading(type, Optional.empty(), Crew.STANDARD, zone), POLICY);
        MassMoment traffic =
                balance.zeroFuel().orElseThrow().minus(balance.dryOperating().orElseThrow());
        assertThat(traffic.massKg()).isEqualTo(850, within(1e-9));
        assertThat(traffic.momentKgM()).isEqualTo(300 * 16 + 350 * 18.5 + 200 * 17, within(1e-6));
    }

    @Test
    void aZoneAndItsRowsMustFit() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> typeWith(List.of(new SeatRow("1", 16, 20))))
                .withMessageContaining("have 20 seats together, but the zone has 30");
        ZoneLoad strange =
                new ZoneLoad(Passengers.adults(1), OptionalDouble.empty(), List.of(new SeatRowLoad(0, 1, 100)));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> loading(SampleJet.type(), Optional.empty(), Crew.STANDARD, strange))
                .withMessageContaining("zone B of SAMPLE has 0 seat rows");
    }

    @Test
    void theSchemeOfTheLoadingCountsForPassengersBagsAndCrew() {
        MassScheme light = new MassScheme("light", "round numbers", 60, 60, 60, 30, 5, 8, 70, 70);
        Loading own = loading(
                SampleJet.type(),
                Optional.of(light),
                Crew.STANDARD,
                new ZoneLoad(new Passengers(1, 1, 1, 2, 1), OptionalDouble.empty()));
        Balance balance = Balancer.balance(own, POLICY);
        assertThat(balance.dryOperating().orElseThrow().massKg()).isEqualTo(40_000 + 4 * 70);
        assertThat(balance.zeroFuel().orElseThrow().massKg()).isEqualTo(40_000 + 4 * 70 + 3 * 60 + 2 * 30 + 5);
    }

    @Test
    void crewByStationSitsThereAndLeavesTheOtherRoleAtItsStandard() {
        AircraftType type = SampleJet.type();
        Crew crew = new Crew(
                OptionalInt.empty(),
                OptionalInt.empty(),
                OptionalDouble.empty(),
                "",
                List.of(Optional.of(new CrewStationLoad(3, OptionalDouble.of(320))), Optional.empty()));
        Balance balance = Balancer.balance(loading(type, Optional.empty(), crew, ZoneLoad.EMPTY), POLICY);
        assertThat(balance.dryOperating().orElseThrow().massKg()).isEqualTo(40_000 + 320 + 2 * 100);
        assertThatIllegalArgumentException()
                .isThrownBy(() -> loading(
                        type,
                        Optional.empty(),
                        new Crew(
                                OptionalInt.empty(),
                                OptionalInt.empty(),
                                OptionalDouble.empty(),
                                "",
                                List.of(Optional.empty())),
                        ZoneLoad.EMPTY))
                .withMessageContaining("one entry for each station");
    }
}
