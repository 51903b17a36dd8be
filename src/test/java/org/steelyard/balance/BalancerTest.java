package org.steelyard.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** How totals are shared and what is known of each level of input, on a jet with round numbers. */
class BalancerTest {

    private static Balance balance(SampleJet jet, SharingRule rule) {
        return Balancer.balance(jet.loading(), Plain.policy(0, 0, 0, 0, rule));
    }

    private static SampleJet totals(int adults, double holdKg) {
        return SampleJet.loaded()
                .load(new Load.Totals(Passengers.adults(adults), OptionalDouble.empty(), new HoldLoad(holdKg, 0)));
    }

    private static List<Double> list(Amounts amounts) {
        return Arrays.stream(amounts.toArray()).boxed().toList();
    }

    @Test
    void totalsFillFromTheFrontOrTheBackOrByCapacity() {
        Distribution front = balance(totals(50, 4000), SharingRule.FRONT_FIRST)
                .distribution()
                .orElseThrow();
        assertThat(list(front.seatedByZone())).containsExactly(30.0, 20.0, 0.0);
        assertThat(list(front.zoneKg())).containsExactly(3000.0, 2000.0, 0.0);
        assertThat(list(front.holdKg())).containsExactly(3000.0, 1000.0, 0.0);
        Distribution back =
                balance(totals(50, 4000), SharingRule.BACK_FIRST).distribution().orElseThrow();
        assertThat(list(back.seatedByZone())).containsExactly(0.0, 20.0, 30.0);
        assertThat(list(back.holdKg())).containsExactly(0.0, 1000.0, 3000.0);
        Distribution even = balance(totals(60, 3000), SharingRule.BY_CAPACITY)
                .distribution()
                .orElseThrow();
        assertThat(list(even.seatedByZone())).containsExactly(20.0, 20.0, 20.0);
        assertThat(even.passengers()).hasValue(60);
    }

    @Test
    void moreThanAllPlacesHoldGoesToTheLastSoThatItShows() {
        Distribution front = balance(totals(100, 9500), SharingRule.FRONT_FIRST)
                .distribution()
                .orElseThrow();
        assertThat(list(front.seatedByZone())).containsExactly(30.0, 30.0, 40.0);
        assertThat(list(front.holdKg())).containsExactly(3000.0, 3000.0, 3500.0);
    }

    @Test
    void aMassWithoutHeadsIsSharedByCapacityAndNobodyIsCounted() {
        Load load = new Load.Totals(Passengers.NONE, OptionalDouble.of(4500), HoldLoad.EMPTY);
        Distribution distribution = balance(SampleJet.loaded().load(load), SharingRule.FRONT_FIRST)
                .distribution()
                .orElseThrow();
        assertThat(list(distribution.zoneKg())).containsExactly(1500.0, 1500.0, 1500.0);
        assertThat(distribution.passengers()).isEmpty();
        assertThat(distribution.assumed()).isTrue();
    }

    @Test
    void actualMassesInZonesLeaveTheCountOpenOnlyWithoutHeads() {
        List<HoldLoad> holds = List.of(HoldLoad.EMPTY, HoldLoad.EMPTY, HoldLoad.EMPTY);
        ZoneLoad massOnly = new ZoneLoad(Passengers.NONE, OptionalDouble.of(800));
        Load open = new Load.ByPlace(List.of(massOnly, ZoneLoad.EMPTY, ZoneLoad.EMPTY), holds);
        assertThat(distribution(open).passengers()).isEmpty();
        assertThat(distribution(open).assumed()).isFalse();
        ZoneLoad counted = new ZoneLoad(new Passengers(0, 0, 8, 0, 2), OptionalDouble.of(777));
        Load known = new Load.ByPlace(List.of(counted, ZoneLoad.EMPTY, ZoneLoad.EMPTY), holds);
        assertThat(distribution(known).passengers()).hasValue(10);
        assertThat(distribution(known).zoneKg().at(0)).isEqualTo(777);
        Load empty = new Load.ByPlace(List.of(ZoneLoad.EMPTY, ZoneLoad.EMPTY, ZoneLoad.EMPTY), holds);
        assertThat(distribution(empty).passengers()).hasValue(0);
    }

    private static Distribution distribution(Load load) {
        return balance(SampleJet.loaded().load(load), SharingRule.BY_CAPACITY)
                .distribution()
                .orElseThrow();
    }

    @Test
    void aFuelTotalFillsByTheFillOrderAndWhatFindsNoRoomIsSharedByCapacity() {
        FuelBalance fits = fuel(new Fuel.Total(11_000, 0, 1000));
        assertThat(list(fits.rampKg())).containsExactly(5000.0, 5000.0, 1000.0);
        FuelBalance over = fuel(new Fuel.Total(15_400, 0, 1000));
        assertThat(over.rampKg().sum()).isCloseTo(15_400, within(1e-9));
        assertThat(over.rampKg().at(0)).isCloseTo(5500, within(1e-9));
        assertThat(over.rampKg().at(2)).isCloseTo(4400, within(1e-9));
    }

    private static FuelBalance fuel(Fuel fuel) {
        return balance(SampleJet.loaded().fuel(fuel), SharingRule.BY_CAPACITY)
                .fuel()
                .orElseThrow();
    }

    @Test
    void aFlightThatBurnsMoreThanItHasIsShortByTheRest() {
        FuelBalance fuel = fuel(new Fuel.Total(4000, 500, 5000));
        assertThat(fuel.shortKg()).isCloseTo(1500, within(1e-9));
        assertThat(fuel.landingKg().sum()).isZero();
        FuelBalance taxiAlone = fuel(new Fuel.Total(400, 500, 100));
        assertThat(taxiAlone.shortKg()).isCloseTo(200, within(1e-9));
    }

    @Test
    void eachStateIsFoundByItsPhase() {
        Loading loading = SampleJet.loaded().loading();
        Balance balance = Balancer.balance(loading, Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY));
        assertThat(balance.state(Phase.DRY_OPERATING)).contains(new MassMoment(40_400, 40_400 * 17));
        assertThat(balance.state(Phase.ZERO_FUEL)).isEqualTo(balance.zeroFuel());
        assertThat(balance.state(Phase.RAMP).orElseThrow().massKg()).isCloseTo(53_400, within(1e-9));
        assertThat(balance.state(Phase.TAKEOFF)).contains(balance.takeoff());
        assertThat(balance.state(Phase.LANDING).orElseThrow().massKg()).isCloseTo(48_200, within(1e-9));
        assertThat(balance.state(Phase.FLIGHT)).isEmpty();
    }

    @Test
    void theTrimForLandingIsReadWithTheOnlyLandingFlapsOfTheType() {
        Balance balance = balance(SampleJet.loaded(), SharingRule.BY_CAPACITY);
        TrimResult landing = balance.landingTrim().orElseThrow();
        assertThat(landing.trimUnits()).hasValue(1);
        assertThat(landing.settingUnits()).hasValue(1);
        assertThat(balance.takeoffTrim().orElseThrow().settingUnits()).hasValue(0);
    }
}
