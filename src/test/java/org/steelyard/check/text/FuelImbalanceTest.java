package org.steelyard.check.text;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.OtherTanks;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;
import org.steelyard.samples.SampleJet;

/** The difference between two tanks is held against its limit all the way from the ramp to landing. */
class FuelImbalanceTest {

    private static final EdgeTable EDGES = new EdgeTable(FuelImbalanceTest.class);
    private static final int SAMPLES = 4000;

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static FuelStage alone(int tank, double untilKg) {
        return new FuelStage(List.of(Plain.tankShare(tank, 1, untilKg)));
    }

    private static FuelSystem tanks(List<FuelStage> burn, double limitKg) {
        FuelSystem sample = SampleJet.type().fuel();
        return new FuelSystem(
                sample.tanks(), burn, sample.fillOrder(), List.of(new ImbalanceLimit(0, 1, limitKg)), 0.8);
    }

    private static Optional<Finding> imbalance(Loading loading) {
        return Checker.check(loading, Balancer.balance(loading, RandomAircraft.STRICT), RandomAircraft.STRICT)
                .findings()
                .stream()
                .filter(finding -> finding.code() == FindingCode.FUEL_IMBALANCE)
                .findFirst();
    }

    private static String sentence(List<FuelStage> burn, double tripKg) {
        Loading loading = OtherTanks.on(
                SampleJet.loaded().loading(), tanks(burn, 600), new Fuel.ByTank(Amounts.of(2600, 2600, 0), 0, tripKg));
        return imbalance(loading)
                .map(finding -> FindingText.sentence(finding, loading.type()))
                .orElse("none");
    }

    @Test
    void oneWingBurntAfterTheOtherPassesTheLimitOnTheWay() {
        List<FuelStage> leftFirst = List.of(alone(0, 600), alone(1, 600), alone(0, 0), alone(1, 0), alone(2, 0));

        EDGES.row(
                EdgeTopic.FUEL_IMBALANCE,
                "2,600 kg in each wing, the left burnt down to 600 kg, then the right, trip 4,000 kg, limit 600 kg",
                "fuel imbalance of 2000 kg in flight between left tank and right tank with 3200 kg aboard is 1400 kg"
                        + " above the limit of 600 kg",
                sentence(leftFirst, 4000));
        EDGES.row(
                EdgeTopic.FUEL_IMBALANCE,
                "the same with a trip of 600 kg: at landing the difference is the limit",
                "none",
                sentence(leftFirst, 600));
        EDGES.row(
                EdgeTopic.FUEL_IMBALANCE,
                "the same with a trip of 601 kg",
                "fuel imbalance of 601 kg at landing between left tank and right tank with 4599 kg aboard is 1 kg above"
                        + " the limit of 600 kg",
                sentence(leftFirst, 601));
    }

    /** Orders, shares and contents drawn, against tanks emptied in 4,000 small sips by a loop of its own. */
    @Test
    @Tag("validation")
    void theGreatestDifferenceIsThatOfTanksEmptiedSipBySip() {
        int inFlight = 0;
        for (long seed = 1; seed <= Draws.of(400); seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            List<FuelStage> burn = burnOrder(random);
            double[] rampKg = {random.nextDouble(0, 5000), random.nextDouble(0, 5000), random.nextDouble(0, 4000)};
            double sumKg = rampKg[0] + rampKg[1] + rampKg[2];
            double taxiKg = random.nextDouble(0, 0.05) * sumKg;
            double tripKg = random.nextDouble(0, 1) * (sumKg - taxiKg);
            Loading loading = OtherTanks.on(
                    SampleJet.loaded().loading(),
                    bent(tanks(burn, 1e-6)),
                    new Fuel.ByTank(Amounts.of(rampKg), taxiKg, tripKg));

            Finding found = imbalance(loading).orElseThrow();

            double sipKg = (taxiKg + tripKg) / SAMPLES;
            assertThat(found.value())
                    .as("seed %d", seed)
                    .isCloseTo(greatestKg(burn, rampKg, sipKg), within(2 * sipKg + 1e-6));
            inFlight += found.phase() == Phase.FLIGHT ? 1 : 0;
        }
        assertThat(inFlight).isPositive();
    }

    private static List<FuelStage> burnOrder(SplittableRandom random) {
        List<FuelStage> burn = new ArrayList<>();
        for (int i = random.nextInt(0, 4); i > 0; i--) {
            int first = random.nextInt(3);
            double until = random.nextDouble(0, 4000);
            List<TankShare> shares = new ArrayList<>(List.of(Plain.tankShare(first, 1, until)));
            if (random.nextBoolean()) {
                shares.add(Plain.tankShare((first + 1) % 3, random.nextDouble(0.3, 3), random.nextDouble(0, 4000)));
            }
            burn.add(new FuelStage(shares));
        }
        int last = random.nextInt(3);
        burn.add(new FuelStage(
                List.of(Plain.tankShare(last, 1, 0), Plain.tankShare((last + 1) % 3, random.nextDouble(0.3, 3), 0))));
        burn.add(alone((last + 2) % 3, 0));
        return burn;
    }

    /** Bends in the arm tables make halts that change nothing of the difference. */
    private static FuelSystem bent(FuelSystem system) {
        List<Tank> tanks = system.tanks().stream()
                .map(tank -> Plain.tank(
                        tank.id(),
                        tank.name(),
                        tank.capacityKg(),
                        List.of(Plain.tankPoint(1500, 16.9), Plain.tankPoint(tank.capacityKg(), 17))))
                .toList();
        return new FuelSystem(tanks, system.burnOrder(), system.fillOrder(), system.imbalances(), 0.8);
    }

    private static double greatestKg(List<FuelStage> burn, double[] rampKg, double sipKg) {
        double[] tanksKg = rampKg.clone();
        double greatestKg = Math.abs(tanksKg[0] - tanksKg[1]);
        for (int i = 0; i < SAMPLES; i++) {
            double leftKg = sipKg;
            for (FuelStage stage : burn) {
                double shares = 0;
                for (TankShare share : stage.shares()) {
                    shares += tanksKg[share.tank()] > share.untilKg() ? share.share() : 0;
                }
                double wantedKg = leftKg;
                for (TankShare share : stage.shares()) {
                    if (shares > 0 && tanksKg[share.tank()] > share.untilKg()) {
                        double partKg =
                                Math.min(wantedKg * share.share() / shares, tanksKg[share.tank()] - share.untilKg());
                        tanksKg[share.tank()] -= partKg;
                        leftKg -= partKg;
                    }
                }
            }
            greatestKg = Math.max(greatestKg, Math.abs(tanksKg[0] - tanksKg[1]));
        }
        return greatestKg;
    }
}
