package org.steelyard.remedy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.FuelFill;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Remedy;
import org.steelyard.check.result.Status;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.remedy.FuelSearch.Found;
import org.steelyard.remedy.FuelSearch.Way;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.OtherTanks;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/** Less fuel, or fuel filled otherwise, as a remedy. */
class FuelRemedyTest {

    private static final EdgeTable EDGES = new EdgeTable(FuelRemedyTest.class);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static Policy reserve(double percentOfCapacity) {
        return new Policy(
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
                0,
                percentOfCapacity);
    }

    private static AuditedFlight audited(Loading loading, Policy policy) {
        Balance balance = Balancer.balance(loading, policy);
        return new AuditedFlight(loading, balance, Checker.check(loading, balance, policy));
    }

    private static String sentence(Loading loading, Policy policy) {
        Remedy remedy = RemedySearch.of(audited(loading, policy), policy).orElseThrow();
        remedy.loading()
                .ifPresent(after ->
                        assertThat(audited(after, policy).assessment().status()).isNotEqualTo(Status.BREACHED));
        return remedy.sentence();
    }

    // ------------------------------------------------------------ heavy

    /** Fuel 11,400 kg, taxi 200, trip 2,000: 9,200 on landing at 55,600 kg, 600 above 55,000; tanks take 14,000. */
    private static Loading heavy() {
        return SampleJet.loaded()
                .tanks(5000, 5000, 1400)
                .burn(200, 2000)
                .hold(0, 1500)
                .hold(2, 1500)
                .loading();
    }

    @Test
    void lessFuelIsToldBeforeLoadThatIsLeftBehind() {
        EDGES.row(
                EdgeTopic.FUEL_REMEDY,
                "landing at 55,600 kg, 600 above the limit, with 9,200 kg of fuel; a reserve of 10 % is 1,400 kg",
                "take 600 kg less fuel (tail tank 800 kg), which leaves 8600 kg on landing: landing mass 55600 → 55000"
                        + " kg; or leave behind 600 kg from hold 1: landing mass 55600 → 55000 kg",
                sentence(heavy(), reserve(10)));
    }

    @Test
    void lessThanTheReserveIsNoRemedy() {
        Loading loading = SampleJet.loaded().takeoffLimit(52_000).loading();

        EDGES.row(
                EdgeTopic.FUEL_REMEDY,
                "take-off 1,200 kg too heavy, 2,800 kg left on landing; a reserve of 15 % is 2,100 kg",
                "leave behind 1000 kg from hold 1 and 200 kg from hold 3: take-off mass 53200 → 52000 kg",
                sentence(loading, reserve(15)));
    }

    @Test
    void whereMovingLoadIsEnoughItIsToldFirst() {
        assertThat(sentence(
                        SampleJet.loaded()
                                .flaps("")
                                .zone(0, 0)
                                .zone(1, 0)
                                .zone(2, 30)
                                .hold(0, 0)
                                .hold(2, 3000)
                                .loading(),
                        reserve(0)))
                .startsWith("move 680 kg from hold 3 to hold 1");
    }

    // ------------------------------------------------------------ filled otherwise

    /** The sample with its tail tank at 25 m, so that what is in it pulls aft. */
    private static Loading tailHeavy(double tailKg) {
        FuelSystem sample = SampleJet.type().fuel();
        Tank tail = Plain.tank("tail", "tail tank", 4000, List.of(Plain.tankPoint(4000, 25)));
        FuelSystem tanks = new FuelSystem(
                List.of(sample.tanks().get(0), sample.tanks().get(1), tail),
                sample.burnOrder(),
                sample.fillOrder(),
                List.of(),
                0.8);
        return OtherTanks.on(
                SampleJet.loaded()
                        .load(new Load.ZeroFuelGiven(MassMoment.at(45_000, 17)))
                        .loading(),
                tanks,
                new Fuel.ByTank(Amounts.of(2000, 2000, tailKg), 0, 3000));
    }

    /** 2,000 kg at 25 m: 16,000 kg m over 51,000 kg are 0.314 m or 32.84 % MAC, the limit is 30 % at take-off. */
    @Test
    void theSameFuelFilledInOrderIsARemedy() {
        EDGES.row(
                EdgeTopic.FUEL_REMEDY,
                "2,000 kg in the tail tank with the wings not full put take-off at 32.84 % MAC; no fuel to spare",
                "fill the same fuel in the type's order (left tank 3000 kg, right tank 3000 kg, tail tank 0 kg): take-off"
                        + " CG 32.84 → 25.00 % MAC",
                sentence(tailHeavy(2000), reserve(22)));
    }

    // ------------------------------------------------------------ order

    @Test
    void lessLeavesWhatIsFilledLastAndMoreGoesWhereIsFilledFirst() {
        FuelSystem system = SampleJet.type().fuel();

        assertThat(FuelFill.toward(system, Amounts.of(1000, 900, 600), 2000).toArray())
                .containsExactly(new double[] {1000, 900, 100}, within(1e-6));
        assertThat(FuelFill.toward(system, Amounts.of(1000, 900, 600), 1850).toArray())
                .containsExactly(new double[] {950, 900, 0}, within(1e-6));
        Amounts more = FuelFill.toward(system, Amounts.of(1000, 900, 600), 3000);
        EDGES.row(
                EdgeTopic.FUEL_REMEDY,
                "500 kg more with 1,000, 900 and 600 kg in wings of 5,000 and tail, which fills last",
                "1200, 1200, 600",
                String.format(Locale.ROOT, "%.0f, %.0f, %.0f", more.at(0), more.at(1), more.at(2)));
        assertThat(FuelFill.toward(system, Amounts.of(5000, 5000, 600), 11_000).toArray())
                .containsExactly(new double[] {5000, 5000, 1000}, within(1e-6));
        assertThat(FuelFill.toward(system, Amounts.of(5000, 5000, 600), 20_000).sum())
                .isEqualTo(14_000);
    }

    /** What is filled by the order stays so, whatever the amount. */
    @Test
    void whatIsFilledByTheOrderStaysSo() {
        FuelSystem system = SampleJet.type().fuel();
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < Draws.of(500); i++) {
            double fromKg = random.nextDouble(0, 14_000);
            double toKg = random.nextDouble(0, 14_000);
            assertThat(FuelFill.toward(system, FuelFill.of(system, fromKg), toKg)
                            .toArray())
                    .containsExactly(FuelFill.of(system, toKg).toArray(), within(1e-6));
        }
    }

    // ------------------------------------------------------------ every amount tried

    /**
     * Small aircraft, whose wing tank fills before the rear one: by an order of its own each amount is tried in steps
     * of 0.2 kg, and the first that leaves no breach is the least but for rounding up to whole kg.
     */
    @Test
    @Tag("validation")
    void theLeastFuelIsThatOfTryingEveryAmount() {
        int changed = 0;
        int anew = 0;
        int none = 0;
        for (long seed = 1; seed <= Draws.of(900); seed++) {
            Loading loading = SmallAircraft.loading(seed);
            AuditedFlight flight = audited(loading, RandomAircraft.STRICT);
            if (flight.assessment().status() != Status.BREACHED) {
                continue;
            }
            Trial trial = new Trial(loading, flight.balance(), flight.assessment());
            Optional<Found> found = new FuelSearch(trial, RandomAircraft.STRICT, 0).lessOrOtherwise();
            Fuel.ByTank fuel = (Fuel.ByTank) loading.fuel();
            double wingKg = fuel.tanksKg().at(0);
            double rearKg = fuel.tanksKg().at(1);
            double spareKg = wingKg + rearKg - 4 - fuel.tripKg();
            double lessKg = tried(
                    loading,
                    0.2,
                    spareKg,
                    kg -> Amounts.of(wingKg - Math.max(0, kg - rearKg), Math.max(0, rearKg - kg)));
            double anewKg = tried(
                    loading,
                    0,
                    spareKg,
                    kg -> Amounts.of(Math.min(200, wingKg + rearKg - kg), Math.max(0, wingKg + rearKg - kg - 200)));
            if (lessKg < Double.POSITIVE_INFINITY) {
                changed++;
                assertThat(found).as("seed %d: less by %.1f", seed, lessKg).isPresent();
                assertThat(found.get().way()).as("seed %d", seed).isEqualTo(Way.CHANGED);
                assertThat(-found.get().changeKg()).as("seed %d", seed).isBetween(lessKg - 0.2, Math.ceil(lessKg));
            } else if (anewKg < Double.POSITIVE_INFINITY) {
                anew++;
                assertThat(found)
                        .as("seed %d: anew, less by %.1f", seed, anewKg)
                        .isPresent();
                assertThat(-found.get().changeKg()).as("seed %d", seed).isLessThanOrEqualTo(Math.ceil(anewKg));
            } else {
                none++;
                assertThat(found).as("seed %d", seed).isEmpty();
            }
        }
        assertThat(changed).isPositive();
        assertThat(anew).isPositive();
        assertThat(none).isPositive();
    }

    private static double tried(Loading loading, double fromKg, double toKg, DoubleFunction<Amounts> tanks) {
        for (double kg = fromKg; kg <= toKg; kg += 0.2) {
            Loading after = loading.with(loading.load(), loading.fuel().inTanks(tanks.apply(kg)));
            if (audited(after, RandomAircraft.STRICT).assessment().status() != Status.BREACHED) {
                return kg;
            }
        }
        return Double.POSITIVE_INFINITY;
    }
}
