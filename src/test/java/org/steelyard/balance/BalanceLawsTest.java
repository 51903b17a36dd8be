package org.steelyard.balance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;

/** Laws of the lever, tried on thousands of aircraft drawn from printed seeds. */
class BalanceLawsTest {

    private static final int AIRCRAFT = Draws.of(5000);
    private static final List<Phase> STATES =
            List.of(Phase.DRY_OPERATING, Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    private static final MathContext DIGITS = new MathContext(60);

    private static void near(double value, double expected, double tolerance, long seed) {
        if (!(Math.abs(value - expected) <= tolerance)) {
            throw new AssertionError("seed " + seed + ": " + value + " for " + expected);
        }
    }

    private static Balance balance(Loading loading) {
        return Balancer.balance(loading, RandomAircraft.STRICT);
    }

    /** Every state of both has the same CG in % MAC. */
    private static void sameCg(Loading one, Loading other, long seed) {
        Balance first = balance(one);
        Balance second = balance(other);
        MeanChord chord = one.type().geometry().chord();
        MeanChord otherChord = other.type().geometry().chord();
        for (Phase phase : STATES) {
            double expected = chord.percentAt(first.state(phase).orElseThrow().armM());
            near(otherChord.percentAt(second.state(phase).orElseThrow().armM()), expected, 1e-9, seed);
        }
    }

    @Test
    void movingTheDatumLeavesPercentMacAlone() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            RandomAircraft aircraft = new RandomAircraft(seed);
            sameCg(aircraft.loading(), aircraft.loading(-37.5, 1), seed);
        });
    }

    @Test
    void scalingAllMassesLeavesTheCgAlone() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            RandomAircraft aircraft = new RandomAircraft(seed);
            sameCg(aircraft.loading(), aircraft.loading(0, 2.5), seed);
        });
    }

    @Test
    void landingIsTakeoffLessTripFuel() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            Balance balance = balance(loading);
            double takeoffKg = balance.takeoff().massKg();
            near(
                    balance.landing().orElseThrow().massKg(),
                    takeoffKg - loading.fuel().tripKg(),
                    1e-7,
                    seed);
            near(
                    balance.ramp().orElseThrow().massKg(),
                    takeoffKg + loading.fuel().taxiKg(),
                    1e-7,
                    seed);
            near(balance.fuel().orElseThrow().shortKg(), 0, 0, seed);
        });
    }

    @Test
    void theCgLiesBetweenTheForemostAndTheRearmostItem() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            List<BigDecimal[]> items = items(loading);
            double least = items.stream()
                    .mapToDouble(item -> item[1].doubleValue())
                    .min()
                    .orElseThrow();
            double greatest = items.stream()
                    .mapToDouble(item -> item[1].doubleValue())
                    .max()
                    .orElseThrow();
            double armM = balance(loading).zeroFuel().orElseThrow().armM();
            near(armM, Math.min(Math.max(armM, least), greatest), 0, seed);
        });
    }

    /**
     * The sums again in decimal arithmetic of 60 digits. Asked for is 1e-9 relative; a sum of n terms of one sign in
     * doubles is within (n - 1) 2^-53 of the exact one (Higham, Accuracy and Stability of Numerical Algorithms, chapter
     * 4), here some 30 terms, and so within 1e-14; held to 1e-13.
     */
    @Test
    void sumsAgreeWithDecimalArithmetic() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            Balance balance = balance(loading);
            List<BigDecimal[]> items = items(loading);
            decimal(balance.zeroFuel().orElseThrow(), items, seed);
            Fuel.ByTank fuel = (Fuel.ByTank) loading.fuel();
            for (int i = 0; i < fuel.tanksKg().size(); i++) {
                items.add(contents(
                        loading.type().fuel().tanks().get(i),
                        new BigDecimal(fuel.tanksKg().at(i))));
            }
            decimal(balance.ramp().orElseThrow(), items, seed);
        });
    }

    private static void decimal(MassMoment state, List<BigDecimal[]> items, long seed) {
        BigDecimal mass = BigDecimal.ZERO;
        BigDecimal moment = BigDecimal.ZERO;
        for (BigDecimal[] item : items) {
            mass = mass.add(item[0]);
            moment = moment.add(item[0].multiply(item[1]));
        }
        near(state.massKg(), mass.doubleValue(), 1e-13 * mass.doubleValue(), seed);
        near(state.momentKgM(), moment.doubleValue(), 1e-13 * moment.doubleValue(), seed);
        double armM = moment.divide(mass, DIGITS).doubleValue();
        near(state.armM(), armM, 1e-13 * armM, seed);
    }

    /** Mass and arm of a tank's contents: whole layers of the table and the part of one. */
    private static BigDecimal[] contents(Tank tank, BigDecimal quantity) {
        BigDecimal lowKg = BigDecimal.ZERO;
        BigDecimal lowKgM = BigDecimal.ZERO;
        for (TankPoint row : tank.armTable()) {
            BigDecimal highKg = new BigDecimal(row.quantityKg());
            BigDecimal highKgM = highKg.multiply(new BigDecimal(row.armM()));
            if (quantity.compareTo(highKg) <= 0) {
                BigDecimal layer = highKgM.subtract(lowKgM).divide(highKg.subtract(lowKg), DIGITS);
                BigDecimal moment = lowKgM.add(quantity.subtract(lowKg).multiply(layer));
                return new BigDecimal[] {quantity, moment.divide(quantity, DIGITS)};
            }
            lowKg = highKg;
            lowKgM = highKgM;
        }
        throw new AssertionError("more than the table holds");
    }

    /** Mass and arm of all that is aboard at zero fuel, put together by other means than the program's. */
    private static List<BigDecimal[]> items(Loading loading) {
        Cabin cabin = loading.type().cabin();
        List<BigDecimal[]> items = new ArrayList<>();
        add(items, loading.tail().basic().massKg(), loading.tail().basic().armM());
        MassMoment pantry = cabin.pantries().get(0).load();
        add(items, pantry.massKg(), pantry.armM());
        add(
                items,
                2 * cabin.scheme().massKg(CrewRole.FLIGHT),
                cabin.crewStations().get(0).armM());
        add(
                items,
                2 * cabin.scheme().massKg(CrewRole.CABIN),
                cabin.crewStations().get(1).armM());
        add(
                items,
                cabin.scheme().massKg(CrewRole.CABIN),
                cabin.crewStations().get(2).armM());
        Load.ByPlace load = (Load.ByPlace) loading.load();
        for (int i = 0; i < load.zones().size(); i++) {
            ZoneLoad zone = load.zones().get(i);
            add(items, zone.massKg(cabin.scheme()), cabin.zones().get(i).armM());
        }
        for (int i = 0; i < load.holds().size(); i++) {
            HoldLoad hold = load.holds().get(i);
            add(
                    items,
                    hold.massKg(cabin.scheme()),
                    loading.type().holds().get(i).armM());
        }
        return items;
    }

    private static void add(List<BigDecimal[]> items, double massKg, double armM) {
        items.add(new BigDecimal[] {new BigDecimal(massKg), new BigDecimal(armM)});
    }

    /**
     * The fuel path again by burning in ten thousand small parts: the same landing state, and every part on the path.
     */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
    void theFuelPathAgreesWithBurningInSmallParts(long seed) {
        Loading loading = new RandomAircraft(seed).loading();
        Balance balance = balance(loading);
        FuelBalance fuel = balance.fuel().orElseThrow();
        List<Tank> tanks = loading.type().fuel().tanks();
        double[] tanksKg = fuel.takeoffKg().toArray();
        MassMoment zeroFuel = balance.zeroFuel().orElseThrow();
        double partKg = loading.fuel().tripKg() / 10_000;
        for (int i = 0; i < 10_000; i++) {
            FuelFlow.burn(tanks, loading.type().fuel().burnOrder(), tanksKg, partKg, () -> {});
            MassMoment now = new FuelBalancer(loading.type().fuel(), zeroFuel).withFuel(tanksKg);
            near(now.momentKgM(), onPath(fuel.path(), now.massKg()), 1e-4, seed);
        }
        assertThat(zeroFuel.massKg() + tanksKg[0] + tanksKg[1] + tanksKg[2])
                .isCloseTo(balance.landing().orElseThrow().massKg(), within(1e-5));
    }

    private static double onPath(FuelPath path, double massKg) {
        List<MassMoment> points = path.points();
        int i = 1;
        while (i < points.size() - 1 && points.get(i).massKg() > massKg) {
            i++;
        }
        MassMoment high = points.get(i - 1);
        MassMoment low = points.get(i);
        double t = (massKg - low.massKg()) / (high.massKg() - low.massKg());
        return low.momentKgM() + t * (high.momentKgM() - low.momentKgM());
    }

    @Test
    void totalsSharedOutKeepTheirSum() {
        for (SharingRule rule : SharingRule.values()) {
            LongStream.range(0, Draws.of(500)).forEach(seed -> {
                Loading detailed = new RandomAircraft(seed).loading();
                Loading totals = withTotals(detailed, 40 + (int) seed % 90, 3000);
                Balance balance = Balancer.balance(totals, Plain.policy(0, 0, 0, 0, rule));
                Distribution distribution = balance.distribution().orElseThrow();
                double passengersKg = (40 + (int) seed % 90) * 84;
                near(distribution.zoneKg().sum(), passengersKg, 1e-8, seed);
                near(distribution.holdKg().sum(), 3000, 1e-8, seed);
                assertThat(distribution.passengersAssumed())
                        .isEqualTo(totals.type().cabin().zones().size() > 1);
                assertThat(distribution.holdsAssumed())
                        .isEqualTo(totals.type().holds().size() > 1);
            });
        }
    }

    private static Loading withTotals(Loading loading, int adults, double holdKg) {
        Load totals = new Load.Totals(
                org.steelyard.model.loading.Passengers.adults(adults),
                java.util.OptionalDouble.empty(),
                new HoldLoad(holdKg, 0));
        return Plain.loading(
                loading.origin(),
                loading.flight(),
                loading.tail(),
                loading.setting(),
                loading.crew(),
                totals,
                new Fuel.Total(9000, 100, 5000),
                loading.performance(),
                loading.recordedTrimUnits(),
                loading.extras());
    }
}
