package org.steelyard.check.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.Distribution;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.LastMinuteChange;
import org.steelyard.model.loading.LastMinuteChange.Part;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.LoadPart;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.LastMinuteRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Zones and holds of the sample jet lie at 15, 17 and 19 m, everything else at 17 m; persons of 100 kg, bags of 10. */
class LastMinuteTest {

    private static final int ANYWHERE = LastMinuteChange.ANYWHERE;

    private static Policy policy(SharingRule rule, int passengers, double massKg, double fuelKg) {
        return Plain.policy(
                0,
                0,
                0,
                0,
                rule,
                Optional.empty(),
                Optional.of(new LastMinuteRule(passengers, massKg, fuelKg)),
                DuplicateRule.FIRST);
    }

    private static Loading with(SampleJet jet, Part... parts) {
        Loading plain = jet.loading();
        return Plain.loading(
                plain.origin(),
                plain.flight(),
                plain.tail(),
                plain.setting(),
                plain.scheme(),
                plain.crew(),
                plain.load(),
                plain.fuel(),
                new LastMinuteChange(List.of(parts)),
                plain.performance(),
                plain.recordedTrimUnits(),
                plain.extras());
    }

    private static Part persons(int zone, int count) {
        return new Part(LoadPart.PASSENGERS, zone, count, count, 100 * count);
    }

    private static Part load(int hold, double massKg) {
        return new Part(LoadPart.HOLDS, hold, 0, 0, massKg);
    }

    private static Part fuel(int tank, double massKg) {
        return new Part(LoadPart.FUEL, tank, 0, 0, massKg);
    }

    private static AuditedFlight audit(Loading loading, Policy policy) {
        Balance balance = Balancer.balance(loading, policy);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
    }

    private static List<String> sentences(AuditedFlight flight) {
        return flight.assessment().findings().stream()
                .filter(finding -> finding.code().code().startsWith("last-minute"))
                .map(finding -> finding.severity().label() + ": "
                        + FindingText.sentence(finding, flight.loading().type()))
                .toList();
    }

    @Test
    void withinTheTolerancesOnlyTheEffectIsNoted() {
        Loading loading = with(SampleJet.loaded(), persons(2, 2), load(0, -100), fuel(2, 300));
        AuditedFlight flight = audit(loading, policy(SharingRule.BY_CAPACITY, 2, 300, 300));
        MassMoment before = audit(loading.beforeChange(), policy(SharingRule.BY_CAPACITY, 0, 0, 0))
                .balance()
                .takeoff();
        MassMoment after = flight.balance().takeoff();
        assertThat(after.massKg() - before.massKg()).isEqualTo(400, within(1e-9));
        assertThat(after.momentKgM() - before.momentKgM()).isEqualTo(200 * 19 - 100 * 15 + 300 * 17, within(1e-6));
        double shiftPercent = (after.armM() - before.armM()) / 4 * 100;
        assertThat(shiftPercent).isEqualTo(600 / after.massKg() / 4 * 100, within(1e-6));
        assertThat(sentences(flight))
                .containsExactly("note: the last-minute change moved take-off mass by +400 kg and take-off CG by"
                        + " +0.28 % MAC (aft)");
        assertThat(flight.assumed()).isEmpty();
    }

    @Test
    void beyondTheTolerancesANewLoadSheetIsCalledFor() {
        Loading loading = with(SampleJet.loaded(), persons(0, -3), persons(2, 4), load(1, 450), fuel(0, -500));
        AuditedFlight flight = audit(loading, policy(SharingRule.BY_CAPACITY, 6, 1000, 400));
        assertThat(sentences(flight))
                .containsExactly(
                        "breach: last-minute change of 7 passengers is 1 passengers beyond the 6 passengers that the policy"
                                + " lets without a new load sheet",
                        "breach: last-minute change of 1150 kg of traffic load is 150 kg beyond the 1000 kg that the policy"
                                + " lets without a new load sheet",
                        "breach: last-minute change of 500 kg of fuel is 100 kg beyond the 400 kg that the policy lets"
                                + " without a new load sheet",
                        "note: the last-minute change moved take-off mass by +50 kg and take-off CG by +0.66 % MAC (aft)");
        Finding finding = flight.assessment().findings().stream()
                .filter(one -> one.code() == FindingCode.LAST_MINUTE_PASSENGERS)
                .findFirst()
                .orElseThrow();
        assertThat(finding.severity()).isEqualTo(Severity.BREACH);
        assertThat(finding.margin()).isEqualTo(-1);
    }

    @Test
    void aPolicyWithoutTheRuleFindsNothingButTheEffect() {
        Loading loading = with(SampleJet.loaded(), persons(0, 20));
        assertThat(sentences(audit(loading, Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY))))
                .hasSize(1);
        assertThat(sentences(audit(loading.beforeChange(), policy(SharingRule.BY_CAPACITY, 0, 0, 0))))
                .isEmpty();
    }

    @Test
    void seatsAndHoldsAreCheckedAfterTheChange() {
        Loading loading = with(SampleJet.loaded().zone(0, 30), persons(0, 1));
        assertThat(audit(loading, policy(SharingRule.BY_CAPACITY, 9, 900, 0))
                        .assessment()
                        .findings())
                .anyMatch(finding -> finding.code() == FindingCode.ZONE_SEATS && finding.value() == 31);
    }

    /** 10 persons sit in each zone of 30 seats: 30 more by the rule; then what is not tied to a place is assumed. */
    @ParameterizedTest
    @EnumSource(SharingRule.class)
    void whoComesAnywhereIsSeatedByTheRuleIntoTheRoomThatIsLeft(SharingRule rule) {
        AuditedFlight flight = audit(with(SampleJet.loaded(), persons(ANYWHERE, 30)), policy(rule, 99, 9999, 0));
        Distribution placed = flight.balance().distribution().orElseThrow();
        double[] expected = switch (rule) {
            case BY_CAPACITY -> new double[] {20, 20, 20};
            case FRONT_FIRST -> new double[] {30, 20, 10};
            case BACK_FIRST -> new double[] {10, 20, 30};
        };
        assertThat(placed.seatedByZone().toArray()).containsExactly(expected, within(1e-9));
        assertThat(placed.passengers()).hasValue(60);
        assertThat(flight.assumed()).containsExactly(LoadPart.PASSENGERS);
    }

    @Test
    void whatGoesFromAnywhereGoesFromWhereItIs() {
        SampleJet jet = SampleJet.loaded()
                .zone(0, 20)
                .zone(1, 0)
                .zone(2, 10)
                .hold(0, 3000)
                .hold(2, 1000);
        Distribution placed = audit(
                        with(jet, persons(ANYWHERE, -3), load(ANYWHERE, -400)),
                        policy(SharingRule.FRONT_FIRST, 9, 9999, 0))
                .balance()
                .distribution()
                .orElseThrow();
        assertThat(placed.seatedByZone().toArray()).containsExactly(new double[] {18, 0, 9}, within(1e-9));
        assertThat(placed.holdKg().toArray()).containsExactly(new double[] {2700, 0, 900}, within(1e-9));
        assertThat(placed.zoneMomentKgM().at(0)).isEqualTo(1800 * 15, within(1e-6));
    }

    @Test
    void moreThanASharedTotalPutsInOnePlaceGoesFromTheOthersToo() {
        Load totals = new Load.Totals(Passengers.adults(30), OptionalDouble.empty(), HoldLoad.EMPTY);
        Distribution placed = audit(
                        with(SampleJet.loaded().load(totals), persons(0, -16)),
                        policy(SharingRule.BY_CAPACITY, 99, 9999, 0))
                .balance()
                .distribution()
                .orElseThrow();
        assertThat(placed.seatedByZone().toArray()).containsExactly(new double[] {0, 7, 7}, within(1e-9));
        assertThat(placed.zoneKg().sum()).isEqualTo(1400, within(1e-9));
        assertThat(placed.zoneMomentKgM().sum()).isEqualTo(700 * 17 + 700 * 19, within(1e-6));
    }

    @Test
    void aZeroFuelStateChangesAtTheArmOfThePlaceOrTheMeanOfAll() {
        SampleJet state = SampleJet.loaded()
                .load(new Load.ZeroFuelGiven(MassMoment.at(50_000, 17)))
                .fuel(new Fuel.ByTank(org.steelyard.model.unit.Amounts.of(1000, 1000, 0), 0, 500));
        AuditedFlight placed = audit(with(state, persons(2, 5)), policy(SharingRule.BY_CAPACITY, 9, 9999, 0));
        assertThat(placed.balance().zeroFuel().orElseThrow()).isEqualTo(new MassMoment(50_500, 50_000 * 17 + 500 * 19));
        assertThat(placed.assumed()).isEmpty();
        AuditedFlight anywhere = audit(with(state, load(ANYWHERE, -300)), policy(SharingRule.BY_CAPACITY, 9, 9999, 0));
        assertThat(anywhere.balance().zeroFuel().orElseThrow().armM()).isEqualTo(17, within(1e-9));
        assertThat(anywhere.assumed()).containsExactly(LoadPart.HOLDS);
    }

    @Test
    void fuelChangesByTankByFillOrderAndByBurnOrder() {
        Policy policy = policy(SharingRule.BY_CAPACITY, 0, 0, 9999);
        assertThat(rampKg(with(SampleJet.loaded(), fuel(1, 500)), policy)).containsExactly(3000, 3500, 2000);
        assertThat(rampKg(with(SampleJet.loaded(), fuel(ANYWHERE, 600)), policy))
                .containsExactly(3300, 3300, 2000);
        assertThat(rampKg(with(SampleJet.loaded(), fuel(ANYWHERE, -600)), policy))
                .containsExactly(3000, 3000, 1400);
        SampleJet total = SampleJet.loaded().fuel(new Fuel.Total(9_000, 0, 1000));
        assertThat(rampKg(with(total, fuel(ANYWHERE, 2000)), policy)).containsExactly(5000, 5000, 1000);
        assertThat(audit(with(SampleJet.loaded(), fuel(ANYWHERE, 600)), policy).assumed())
                .containsExactly(LoadPart.FUEL);
    }

    private static double[] rampKg(Loading loading, Policy policy) {
        return Balancer.balance(loading, policy).fuel().orElseThrow().rampKg().toArray();
    }

    @Test
    void aGivenTakeoffStateAndPlacesThatAreNotThereAreRefused() {
        SampleJet state = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(55_000, 17)))
                .fuel(new Fuel.NotGiven());
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(state, persons(0, 1)))
                .withMessageContaining("does not change any more");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> with(SampleJet.loaded(), persons(3, 1)))
                .withMessageContaining("place that SAMPLE does not have");
    }
}
