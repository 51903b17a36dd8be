package org.steelyard.validation;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.LoadChange;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.ScaleReading;
import org.steelyard.model.type.TankShare;
import org.steelyard.model.type.WeighingRecord;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.Plain;
import org.steelyard.samples.RandomAircraft;

/** Laws that hold for every aircraft and every load, each tried on thousands drawn from seeds that a failure prints. */
@Tag("validation")
class PropertiesTest {

    private static final int DRAWS = Draws.of(4000);
    private static final List<Phase> STATES =
            List.of(Phase.DRY_OPERATING, Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    private static void near(double value, double expected, double tolerance, long seed) {
        if (!(Math.abs(value - expected) <= tolerance)) {
            throw new AssertionError("seed " + seed + ": " + value + " for " + expected);
        }
    }

    private static void require(boolean holds, long seed, String what) {
        if (!holds) {
            throw new AssertionError("seed " + seed + ": " + what);
        }
    }

    private static Balance balance(Loading loading) {
        return Balancer.balance(loading, RandomAircraft.STRICT);
    }

    private static void sameStates(Loading one, Loading other, long seed) {
        Balance first = balance(one);
        Balance second = balance(other);
        for (Phase phase : STATES) {
            MassMoment expected = first.state(phase).orElseThrow();
            MassMoment state = second.state(phase).orElseThrow();
            near(state.massKg(), expected.massKg(), 1e-12 * expected.massKg(), seed);
            near(state.armM(), expected.armM(), 1e-11, seed);
        }
    }

    private static Loading with(Loading loading, AircraftType type, Load load, Fuel fuel) {
        return Plain.loading(
                loading.origin(),
                loading.flight(),
                Plain.tail("TEST-1", type, loading.tail().basic()),
                loading.setting(),
                loading.crew(),
                load,
                fuel,
                loading.performance(),
                loading.recordedTrimUnits(),
                loading.extras());
    }

    private static AircraftType with(AircraftType type, List<CabinZone> zones, List<Hold> holds, FuelSystem fuel) {
        Cabin cabin = type.cabin();
        return Plain.aircraftType(
                type.id(),
                type.name(),
                type.geometry(),
                type.limits(),
                new Cabin(
                        zones,
                        cabin.crewStations(),
                        cabin.flightCrew(),
                        cabin.cabinCrew(),
                        cabin.pantries(),
                        cabin.scheme()),
                holds,
                type.groups(),
                fuel,
                type.envelopes(),
                type.trimScales());
    }

    private static <T> List<T> reversed(List<T> list) {
        List<T> copy = new ArrayList<>(list);
        Collections.reverse(copy);
        return copy;
    }

    @Test
    void theOrderOfItemsDoesNotMatter() {
        for (long seed = 0; seed < DRAWS; seed++) {
            Loading loading = new RandomAircraft(seed).loading();
            AircraftType type = loading.type();
            Load.ByPlace load = (Load.ByPlace) loading.load();
            Fuel.ByTank fuel = (Fuel.ByTank) loading.fuel();
            double[] tanksKg = fuel.tanksKg().toArray();
            int last = tanksKg.length - 1;
            double[] turnedKg = new double[tanksKg.length];
            for (int i = 0; i <= last; i++) {
                turnedKg[i] = tanksKg[last - i];
            }
            FuelSystem system = new FuelSystem(
                    reversed(type.fuel().tanks()),
                    turned(type.fuel().burnOrder(), last),
                    turned(type.fuel().fillOrder(), last),
                    List.of(),
                    0.8);
            AircraftType turned = with(type, reversed(type.cabin().zones()), reversed(type.holds()), system);
            Load turnedLoad = new Load.ByPlace(reversed(load.zones()), reversed(load.holds()));
            Fuel turnedFuel = new Fuel.ByTank(Amounts.of(turnedKg), fuel.taxiKg(), fuel.tripKg());
            sameStates(loading, with(loading, turned, turnedLoad, turnedFuel), seed);
        }
    }

    private static List<FuelStage> turned(List<FuelStage> stages, int last) {
        return stages.stream()
                .map(stage -> new FuelStage(reversed(stage.shares()).stream()
                        .map(share -> Plain.tankShare(last - share.tank(), share.share(), share.untilKg()))
                        .toList()))
                .toList();
    }

    @Test
    void splittingAnItemChangesNothing() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Loading loading = new RandomAircraft(seed).loading();
            AircraftType type = loading.type();
            Load.ByPlace load = (Load.ByPlace) loading.load();
            int place = random.nextInt(type.holds().size());
            Hold hold = type.holds().get(place);
            HoldLoad whole = load.holds().get(place);
            double part = random.nextDouble();
            int bags = random.nextInt(whole.bags() + 1);
            List<Hold> holds = new ArrayList<>(type.holds());
            holds.add(new Hold("part", "part", hold.armM(), hold.maxKg(), hold.floor()));
            List<HoldLoad> loads = new ArrayList<>(load.holds());
            loads.set(place, new HoldLoad(whole.massKg() * part, bags));
            loads.add(new HoldLoad(whole.massKg() * (1 - part), whole.bags() - bags));
            AircraftType split = with(type, type.cabin().zones(), holds, type.fuel());
            sameStates(loading, with(loading, split, new Load.ByPlace(load.zones(), loads), loading.fuel()), seed);
        }
    }

    @Test
    void landingIsTakeoffLessTripFuelForAnyBurnOrder() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Loading loading = new RandomAircraft(seed).loading();
            AircraftType type = loading.type();
            List<FuelStage> order = drawnOrder(random, type.fuel().tanks().size());
            FuelSystem system =
                    new FuelSystem(type.fuel().tanks(), order, type.fuel().fillOrder(), List.of(), 0.8);
            AircraftType other = with(type, type.cabin().zones(), type.holds(), system);
            Balance balance = balance(with(loading, other, loading.load(), loading.fuel()));
            double burntKg =
                    balance.takeoff().massKg() - balance.landing().orElseThrow().massKg();
            near(burntKg, loading.fuel().tripKg(), 1e-7, seed);
            near(balance.fuel().orElseThrow().shortKg(), 0, 0, seed);
        }
    }

    /** Tanks in any order, alone or together, some down to a reserve first. */
    private static List<FuelStage> drawnOrder(SplittableRandom random, int tanks) {
        List<FuelStage> order = new ArrayList<>();
        for (int stage = 0; stage < 3; stage++) {
            List<TankShare> shares = new ArrayList<>();
            for (int tank = 0; tank < tanks; tank++) {
                if (random.nextBoolean()) {
                    shares.add(Plain.tankShare(tank, random.nextDouble(0.2, 3), random.nextDouble(0, 3000)));
                }
            }
            if (!shares.isEmpty()) {
                order.add(new FuelStage(shares));
            }
        }
        for (int tank = 0; tank < tanks; tank++) {
            order.add(new FuelStage(List.of(Plain.tankShare(tank, 1, 0))));
        }
        return order;
    }

    @Test
    void indexAndArmAgreeForAnyReference() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            IndexFormula formula = new IndexFormula(
                    random.nextDouble(-50, 50), random.nextDouble(1, 5000), random.nextDouble(-100, 200));
            MassMoment state = MassMoment.at(random.nextDouble(500, 300_000), random.nextDouble(-20, 50));
            MassMoment item = MassMoment.at(random.nextDouble(1, 5000), random.nextDouble(-20, 50));
            MassMoment back = formula.at(state.massKg(), formula.indexOf(state));
            near(back.armM(), state.armM(), 1e-9, seed);
            double added = formula.indexOf(state) + formula.influenceOf(item);
            near(formula.indexOf(state.plus(item)), added, 1e-9 * (1 + Math.abs(added)), seed);
            boolean behind = item.armM() > formula.referenceArmM();
            require(formula.influenceOf(item) > 0 == behind, seed, "aft of the reference arm is positive");
        }
    }

    @Test
    void aLineStraightInMomentAgreesWithOneStraightInArmAtVerticesOnly() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            LimitPoint low = new LimitPoint(random.nextDouble(1000, 50_000), random.nextDouble(5, 25));
            LimitPoint high =
                    new LimitPoint(low.massKg() * random.nextDouble(1.05, 2), low.armM() + random.nextDouble(0.01, 2));
            LimitLine arm = new LimitLine(Side.FORWARD, Straightness.ARM, List.of(low, high));
            LimitLine moment = new LimitLine(Side.FORWARD, Straightness.MOMENT, List.of(low, high));
            near(moment.armAtM(low.massKg()), arm.armAtM(low.massKg()), 0, seed);
            near(moment.armAtM(high.massKg()), arm.armAtM(high.massKg()), 0, seed);
            double t = random.nextDouble(0.05, 0.95);
            double massKg = low.massKg() + t * (high.massKg() - low.massKg());
            double apartM = moment.armAtM(massKg) - arm.armAtM(massKg);
            // of two straight lines through the same ends the one in moment bulges toward the heavier end
            double expectedM = t * (1 - t) * (high.massKg() - low.massKg()) * (high.armM() - low.armM()) / massKg;
            near(apartM, expectedM, 1e-9, seed);
            require(apartM > 0, seed, "the two lines differ between vertices");
        }
    }

    @Test
    void trimAndItsInverseAreConsistent() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            for (TrimLaw law : List.of(points(random), table(random), slope(random))) {
                double massKg = random.nextDouble(50_000, 60_000);
                CgRange range = law.cgRange();
                double cgPercentMac = random.nextDouble(range.fromPercentMac(), range.toPercentMac());
                double units = law.trimUnitsAt(cgPercentMac, massKg).orElseThrow();
                CgRange back = law.cgFor(units, units, massKg).orElseThrow();
                require(
                        back.fromPercentMac() - 1e-7 <= cgPercentMac && cgPercentMac <= back.toPercentMac() + 1e-7,
                        seed,
                        "the CG is among those that need its trim");
                double aft = law.trimUnitsAt(range.toPercentMac(), massKg).orElseThrow();
                double front = law.trimUnitsAt(range.fromPercentMac(), massKg).orElseThrow();
                require(front >= units && units >= aft, seed, "farther forward needs no less nose-up");
                near(law.trimUnitsAt(back.toPercentMac(), massKg).orElseThrow(), units, 1e-9, seed);
                near(law.trimUnitsAt(back.fromPercentMac(), massKg).orElseThrow(), units, 1e-9, seed);
                CgRange wider = law.cgFor(units - 0.25, units + 0.25, massKg).orElseThrow();
                require(
                        wider.contains(back.fromPercentMac()) && wider.contains(back.toPercentMac()),
                        seed,
                        "a wider band holds the narrower one's CGs");
                require(law.cgFor(front + 1, front + 2, massKg).isEmpty(), seed, "beyond the scale nothing");
                require(law.trimUnitsAt(range.toPercentMac() + 0.1, massKg).isEmpty(), seed, "never extended");
            }
        }
    }

    private static TrimPoints points(SplittableRandom random) {
        List<TrimPoint> points = new ArrayList<>();
        double cgPercentMac = 10;
        double units = 8;
        for (int i = random.nextInt(2, 8); i > 0; i--) {
            points.add(new TrimPoint(cgPercentMac, units));
            cgPercentMac += random.nextDouble(1, 6);
            units -= random.nextInt(4) == 0 ? 0 : random.nextDouble(0.1, 2);
        }
        return new TrimPoints(points);
    }

    private static TrimTable table(SplittableRandom random) {
        Amounts cgs = Amounts.of(10, 20, 30, 40);
        List<Amounts> rows = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double units = random.nextDouble(4, 8);
            double step = random.nextDouble(0.1, 2);
            rows.add(Amounts.of(units, units - step, units - 2.5 * step, units - 3 * step));
        }
        return new TrimTable(Amounts.of(50_000, 54_000, 60_000), cgs, rows);
    }

    private static TrimSlope slope(SplittableRandom random) {
        TrimPoint anchor = new TrimPoint(random.nextDouble(15, 35), random.nextDouble(-2, 6));
        return new TrimSlope(anchor, -random.nextDouble(0.05, 1), new CgRange(8, 45));
    }

    @Test
    void whatAChangeOfLoadWasToBringItBrings() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            MassMoment state = MassMoment.at(random.nextDouble(500, 300_000), random.nextDouble(10, 20));
            double wantedM = state.armM() + random.nextDouble(-1, 1);
            double fromM = random.nextDouble(-5, 10);
            double toM = random.nextDouble(20.5, 40);
            double moveKg = LoadChange.massToMoveKg(state, wantedM, fromM, toM);
            MassMoment moved = LoadChange.move(state, moveKg, fromM, toM);
            near(moved.armM(), wantedM, 1e-9, seed);
            near(moved.massKg(), state.massKg(), 0, seed);
            double addKg = LoadChange.massToAddKg(state, wantedM, toM + 1);
            near(state.plus(MassMoment.at(addKg, toM + 1)).armM(), wantedM, 1e-9, seed);
            double ballastKg = random.nextDouble(10, 500);
            double atM = LoadChange.armToAddAtM(state, wantedM, ballastKg);
            near(state.plus(MassMoment.at(ballastKg, atM)).armM(), wantedM, 1e-9, seed);
        }
    }

    @Test
    void theTrafficLoadAllowedJustKeepsEveryLimit() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            Loading plain = new RandomAircraft(seed).loading();
            double takeoffKg = random.nextDouble(60_000, 80_000);
            MassLimits limits = new MassLimits(
                    takeoffKg + random.nextDouble(0, 500),
                    takeoffKg,
                    takeoffKg - random.nextDouble(0, 15_000),
                    takeoffKg - random.nextDouble(0, 20_000),
                    1000);
            Loading loading = limited(plain, limits);
            TrafficLoad load = Checker.check(loading, balance(loading), RandomAircraft.STRICT)
                    .trafficLoad()
                    .orElseThrow();
            if (load.allowedKg() > 1) {
                require(!tooHeavy(loading, load.allowedKg()), seed, "the load allowed breaks a limit");
                require(tooHeavy(loading, load.allowedKg() + 0.01), seed, "more than allowed breaks none");
            }
        }
    }

    private static Loading limited(Loading loading, MassLimits limits) {
        AircraftType type = loading.type();
        AircraftType limited = Plain.aircraftType(
                type.id(),
                type.name(),
                type.geometry(),
                limits,
                type.cabin(),
                type.holds(),
                type.groups(),
                type.fuel(),
                type.envelopes(),
                type.trimScales());
        return with(loading, limited, loading.load(), loading.fuel());
    }

    private static boolean tooHeavy(Loading loading, double trafficKg) {
        Load.ByPlace load = (Load.ByPlace) loading.load();
        List<ZoneLoad> zones = load.zones().stream().map(zone -> ZoneLoad.EMPTY).toList();
        List<HoldLoad> holds = new ArrayList<>(Collections.nCopies(load.holds().size(), HoldLoad.EMPTY));
        holds.set(0, new HoldLoad(trafficKg, 0));
        Loading changed = with(loading, loading.type(), new Load.ByPlace(zones, holds), loading.fuel());
        return Checker.check(changed, balance(changed), RandomAircraft.STRICT).findings().stream()
                .anyMatch(finding -> finding.code() == FindingCode.MASS_HIGH);
    }

    /** An aircraft on three wheels carries on each what statics say; its weighing gives the aircraft back. */
    @Test
    void weighingGivesBackTheAircraftOnTheScales() {
        for (long seed = 0; seed < DRAWS; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double massKg = random.nextDouble(400, 200_000);
            double noseM = random.nextDouble(-2, 5);
            double mainM = noseM + random.nextDouble(2, 25);
            double cgM = random.nextDouble(noseM, mainM);
            double leftPart = random.nextDouble(0.3, 0.7);
            double noseKg = massKg * (mainM - cgM) / (mainM - noseM);
            double mainsKg = massKg - noseKg;
            double tareKg = random.nextDouble(0, 50);
            double fuelKg = random.nextDouble(0, massKg / 4);
            double fuelM = random.nextDouble(noseM, mainM);
            WeighingRecord record = new WeighingRecord(
                    List.of(
                            new ScaleReading("nose", noseKg + tareKg, tareKg, noseM),
                            new ScaleReading("left", mainsKg * leftPart, 0, mainM),
                            new ScaleReading("right", mainsKg * (1 - leftPart), 0, mainM)),
                    List.of(MassMoment.at(-fuelKg, fuelM)));
            MassMoment basic = record.basic();
            near(basic.massKg(), massKg - fuelKg, 1e-9 * massKg, seed);
            near(basic.plus(MassMoment.at(fuelKg, fuelM)).armM(), cgM, 1e-9, seed);
        }
    }

    @Test
    void aStateGivenIsTheStateComputed() {
        for (long seed = 0; seed < DRAWS; seed++) {
            Loading loading = new RandomAircraft(seed).loading();
            Balance balance = balance(loading);
            MassMoment zeroFuel = balance.zeroFuel().orElseThrow();
            Loading given = with(loading, loading.type(), new Load.ZeroFuelGiven(zeroFuel), loading.fuel());
            Balance fromState = balance(given);
            near(fromState.takeoff().momentKgM(), balance.takeoff().momentKgM(), 1e-6, seed);
            near(
                    fromState.landing().orElseThrow().massKg(),
                    balance.landing().orElseThrow().massKg(),
                    1e-9,
                    seed);
            require(fromState.dryOperating().isEmpty(), seed, "what is not known stays unknown");
            Loading takeoff =
                    with(loading, loading.type(), new Load.TakeoffGiven(balance.takeoff()), new Fuel.NotGiven());
            near(balance(takeoff).takeoff().armM(), balance.takeoff().armM(), 0, seed);
            require(balance(takeoff).fuel().isEmpty(), seed, "no fuel is made up");
        }
    }
}
