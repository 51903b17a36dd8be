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
import org.steelyard.model.Cabin;
import org.steelyard.model.CrewRole;
import org.steelyard.model.Fuel;
import org.steelyard.model.HoldLoad;
import org.steelyard.model.Load;
import org.steelyard.model.Loading;
import org.steelyard.model.MassMoment;
import org.steelyard.model.MeanChord;
import org.steelyard.model.Phase;
import org.steelyard.model.Policy;
import org.steelyard.model.SharingRule;
import org.steelyard.model.Tank;
import org.steelyard.model.ZoneLoad;
import org.steelyard.samples.RandomAircraft;

/** Laws of the lever, tried on thousands of aircraft drawn from printed seeds. */
class BalanceLawsTest {

    private static final int AIRCRAFT = 5000;
    private static final List<Phase> STATES =
            List.of(Phase.DRY_OPERATING, Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    private static Balance balance(Loading loading) {
        return Balancer.balance(loading, RandomAircraft.STRICT);
    }

    private static double percentMac(Loading loading, Phase phase) {
        MeanChord chord = loading.type().geometry().chord();
        return chord.percentAt(balance(loading).state(phase).orElseThrow().armM());
    }

    @Test
    void movingTheDatumLeavesPercentMacAlone() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            RandomAircraft aircraft = new RandomAircraft(seed);
            for (Phase phase : STATES) {
                assertThat(percentMac(aircraft.loading(-37.5, 1), phase))
                        .as("seed %d, %s", seed, phase)
                        .isCloseTo(percentMac(aircraft.loading(), phase), within(1e-9));
            }
        });
    }

    @Test
    void scalingAllMassesLeavesTheCgAlone() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            RandomAircraft aircraft = new RandomAircraft(seed);
            for (Phase phase : STATES) {
                assertThat(percentMac(aircraft.loading(0, 2.5), phase))
                        .as("seed %d, %s", seed, phase)
                        .isCloseTo(percentMac(aircraft.loading(), phase), within(1e-9));
            }
        });
    }

    @Test
    void landingIsTakeoffLessTripFuel() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            Balance balance = balance(loading);
            assertThat(balance.landing().orElseThrow().massKg())
                    .as("seed %d", seed)
                    .isCloseTo(balance.takeoff().massKg() - loading.fuel().tripKg(), within(1e-7));
            assertThat(balance.ramp().orElseThrow().massKg())
                    .as("seed %d", seed)
                    .isCloseTo(balance.takeoff().massKg() + loading.fuel().taxiKg(), within(1e-7));
            assertThat(balance.fuel().orElseThrow().shortKg()).isZero();
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
            assertThat(balance(loading).zeroFuel().orElseThrow().armM())
                    .as("seed %d", seed)
                    .isBetween(least, greatest);
        });
    }

    /**
     * The sums again in decimal arithmetic of 60 digits: the doubles stay within 1e-9 relative, in fact within 1e-13.
     */
    @Test
    void sumsAgreeWithDecimalArithmetic() {
        LongStream.range(0, AIRCRAFT).forEach(seed -> {
            Loading loading = new RandomAircraft(seed).loading();
            BigDecimal mass = BigDecimal.ZERO;
            BigDecimal moment = BigDecimal.ZERO;
            for (BigDecimal[] item : items(loading)) {
                mass = mass.add(item[0]);
                moment = moment.add(item[0].multiply(item[1]));
            }
            MassMoment zeroFuel = balance(loading).zeroFuel().orElseThrow();
            double arm = moment.divide(mass, new MathContext(60)).doubleValue();
            assertThat(zeroFuel.massKg()).as("seed %d", seed).isCloseTo(mass.doubleValue(), relative(mass, 1e-13));
            assertThat(zeroFuel.armM()).as("seed %d", seed).isCloseTo(arm, within(1e-13 * 20));
        });
    }

    private static org.assertj.core.data.Offset<Double> relative(BigDecimal size, double part) {
        return within(part * size.doubleValue());
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
            assertThat(now.momentKgM())
                    .as("seed %d, part %d", seed, i)
                    .isCloseTo(onPath(fuel.path(), now.massKg()), within(1e-4));
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
            LongStream.range(0, 500).forEach(seed -> {
                Loading detailed = new RandomAircraft(seed).loading();
                Loading totals = withTotals(detailed, 40 + (int) seed % 90, 3000);
                Balance balance = Balancer.balance(totals, new Policy(0, 0, 0, 0, rule));
                Distribution distribution = balance.distribution().orElseThrow();
                double passengersKg = (40 + (int) seed % 90) * 84;
                assertThat(distribution.zoneKg().sum())
                        .as("seed %d, %s", seed, rule)
                        .isCloseTo(passengersKg, within(1e-8));
                assertThat(distribution.holdKg().sum()).isCloseTo(3000, within(1e-8));
                assertThat(distribution.assumed()).isTrue();
            });
        }
    }

    private static Loading withTotals(Loading loading, int adults, double holdKg) {
        Load totals = new Load.Totals(
                org.steelyard.model.Passengers.adults(adults),
                java.util.OptionalDouble.empty(),
                new HoldLoad(holdKg, 0));
        return new Loading(
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
