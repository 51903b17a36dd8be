package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.RemedyMeans;
import org.steelyard.check.result.Status;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

class RemedySearchTest {

    private static final Policy POLICY = RandomAircraft.STRICT;

    private static AuditedFlight audited(Loading loading, Policy policy) {
        Balance balance = Balancer.balance(loading, policy);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
    }

    private static Optional<Remedy> remedy(Loading loading) {
        return RemedySearch.of(audited(loading, POLICY), POLICY);
    }

    private static String sentence(SampleJet jet) {
        return remedy(jet.loading()).orElseThrow().sentence();
    }

    private static Status again(Remedy remedy, Policy policy) {
        return audited(remedy.loading().orElseThrow(), policy).assessment().status();
    }

    @Test
    void aCleanFlightHasNoRemedy() {
        assertThat(remedy(SampleJet.loaded().loading())).isEmpty();
    }

    /** Take-off mass 52,900 kg; 30 people and 3 t at 19 m: the moment to lose is read off by hand below. */
    @Test
    void theLeastMassIsMovedTheLongestWay() {
        SampleJet jet = SampleJet.loaded()
                .flaps("")
                .zone(0, 0)
                .zone(1, 0)
                .zone(2, 30)
                .hold(0, 0)
                .hold(2, 3000);

        // Zero fuel: 40,000 basic, 400 crew, 3,000 + 3,000 load = 46,400 kg; moment about 17 m 6,000 × 2 = 12,000 kg·m,
        // 12,000 / 46,400 = 0.2586 m = 31.47 % MAC; allowed 30 % = 0.2 m × 46,400 = 9,280: 2,720 to lose over 4 m.
        assertThat(sentence(jet)).isEqualTo("move 680 kg from hold 3 to hold 1: zero fuel CG 31.47 → 30.00 % MAC");
    }

    @Test
    void anOverfullHoldIsEasedByAMove() {
        Remedy remedy = remedy(SampleJet.loaded().hold(2, 3200).loading()).orElseThrow();

        assertThat(remedy.sentence()).isEqualTo("move 200 kg from hold 3 to hold 1: hold 3 3200 → 3000 kg");
        assertThat(again(remedy, POLICY)).isNotEqualTo(Status.BREACHED);
    }

    @Test
    void wholeBagsMoveWhereTheInputHasBags() {
        Load load = new Load.ByPlace(
                List.of(adults(0), adults(0), adults(30)),
                List.of(HoldLoad.EMPTY, HoldLoad.EMPTY, new HoldLoad(0, 300)));

        assertThat(sentence(SampleJet.loaded().flaps("").load(load)))
                .isEqualTo("move 68 bags from hold 3 to hold 1: zero fuel CG 31.47 → 30.00 % MAC");
    }

    private static ZoneLoad adults(int count) {
        return new ZoneLoad(Passengers.adults(count), OptionalDouble.empty());
    }

    @Test
    void peopleMoveWhereThereIsNothingElse() {
        Load load = new Load.ByPlace(
                List.of(adults(0), adults(30), adults(31)), List.of(HoldLoad.EMPTY, HoldLoad.EMPTY, HoldLoad.EMPTY));

        assertThat(sentence(SampleJet.loaded().load(load))).isEqualTo("move 1 passenger from zone C to zone A");
    }

    @Test
    void loadIsLeftBehindWhereTheMassIsTooHigh() {
        SampleJet jet = SampleJet.loaded().takeoffLimit(52_000);

        assertThat(sentence(jet))
                .isEqualTo(
                        "take 1200 kg less fuel (tail tank 800 kg), which leaves 1600 kg on landing, if that is reserve"
                                + " enough: take-off mass 53200 → 52000 kg; or leave behind 1000 kg from hold 1 and 200 kg from"
                                + " hold 3: take-off mass 53200 → 52000 kg");
    }

    @Test
    void aReserveIsKeptWhereItCanBe() {
        SampleJet jet = SampleJet.loaded()
                .flaps("")
                .zone(0, 0)
                .zone(1, 0)
                .zone(2, 30)
                .hold(0, 0)
                .hold(2, 3000);
        Policy reserve = new Policy(
                0,
                0,
                0,
                0,
                SharingRule.BY_CAPACITY,
                Optional.empty(),
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.empty(),
                Optional.empty(),
                1,
                0);

        // 1 % MAC of 46,400 kg are 1,856 kg·m more, 464 kg over 4 m.
        assertThat(RemedySearch.of(audited(jet.loading(), reserve), reserve)
                        .orElseThrow()
                        .sentence())
                .isEqualTo("move 1144 kg from hold 3 to hold 1: zero fuel CG 31.47 → 29.00 % MAC");
    }

    @Test
    void aTakeoffStateAloneHasNoRemedy() {
        Loading loading = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(50_000, 17.5)))
                .fuel(new Fuel.NotGiven())
                .loading();

        assertThat(remedy(loading).orElseThrow().means()).isEqualTo(RemedyMeans.NONE);
        assertThat(remedy(loading).orElseThrow().sentence())
                .isEqualTo("no remedy, because only the take-off state is given, so what is aboard is not known");
    }

    /** The remedy by load, which is told after the fuel where something is left behind. */
    private static Remedy byLoad(Remedy remedy) {
        return remedy.means() == RemedyMeans.FUEL ? remedy.other().orElse(remedy) : remedy;
    }

    @Test
    @Tag("validation")
    void theLeastIsNeverMoreThanWhatTryingEveryWayFinds() {
        Map<RemedyMeans, Integer> counts = new EnumMap<>(RemedyMeans.class);
        for (long seed = 1; seed <= Draws.of(150); seed++) {
            Loading loading = SmallAircraft.loading(seed);
            Optional<Remedy> remedy = remedy(loading);
            if (remedy.isEmpty()) {
                continue;
            }
            RemedyMeans means = byLoad(remedy.get()).means();
            counts.merge(means, 1, Integer::sum);
            BruteForce.Least least = BruteForce.of(loading, POLICY);
            if (means == RemedyMeans.MOVE || means == RemedyMeans.LEAVE) {
                boolean move = means == RemedyMeans.MOVE;
                assertThat(byLoad(remedy.get()).massKg())
                        .as("seed %d: %s", seed, remedy.get().sentence())
                        .isCloseTo(move ? least.movedKg() : least.leftKg(), within(1e-6));
                assertThat(move).as("seed %d", seed).isEqualTo(least.leftKg() == 0);
            } else {
                assertThat(least.leftKg())
                        .as("seed %d: %s", seed, remedy.get().sentence())
                        .isInfinite();
            }
        }
        assertThat(counts).containsKeys(RemedyMeans.MOVE, RemedyMeans.LEAVE);
    }

    @Test
    @Tag("validation")
    void everyRemedyOfADrawnAircraftPassesTheAuditItselfAndIsProvedLeast() {
        int found = 0;
        for (long seed = 1; seed <= Draws.of(60); seed++) {
            AuditedFlight flight = audited(new RandomAircraft(seed).loading(), POLICY);
            Optional<Remedy> remedy = RemedySearch.of(flight, POLICY);
            assertThat(remedy.isPresent())
                    .as("seed %d", seed)
                    .isEqualTo(flight.assessment().status() == Status.BREACHED);
            if (remedy.isPresent() && remedy.get().means() != RemedyMeans.NONE) {
                found++;
                Assessment after =
                        audited(remedy.get().loading().orElseThrow(), POLICY).assessment();
                assertThat(after.status())
                        .as("seed %d: %s", seed, remedy.get().sentence())
                        .isNotEqualTo(Status.BREACHED);
            }
        }
        assertThat(found).isPositive();
    }
}
