package org.steelyard.samples;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.SplittableRandom;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tail;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;

/**
 * A made-up aircraft with a made-up load, drawn from a seed. It can be built anew with its datum moved and with all its
 * masses scaled, so that laws which hold for every aircraft can be tried on many.
 */
public final class RandomAircraft {

    /** A policy under which nothing is marginal. */
    public static final Policy STRICT = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    private final long seed;

    public RandomAircraft(long seed) {
        this.seed = seed;
    }

    /** The loading as drawn. */
    public Loading loading() {
        return loading(0, 1);
    }

    /**
     * The loading with its datum moved and its masses scaled.
     *
     * @param datumM added to every arm
     * @param scale factor to every mass
     */
    public Loading loading(double datumM, double scale) {
        Draw draw = new Draw(new SplittableRandom(seed), datumM, scale);
        AircraftType type = draw.type();
        Tail tail = Plain.tail("TEST-1", type, MassMoment.at(draw.mass(20000, 40000), draw.arm(15, 17)));
        return Plain.loading(
                new Origin("made.csv", "", 2),
                new FlightIdent("T1", LocalDate.of(2026, 4, 1), "AAAAA", "BBBBB"),
                tail,
                new FlightSetting("", "", ""),
                new Crew(OptionalInt.of(2), OptionalInt.of(3), OptionalDouble.empty(), ""),
                draw.load(type),
                draw.fuel(type),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                List.of());
    }

    private record Draw(SplittableRandom random, double datumM, double scale) {

        double mass(double from, double to) {
            return scale * random.nextDouble(from, to);
        }

        double arm(double from, double to) {
            return datumM + random.nextDouble(from, to);
        }

        AircraftType type() {
            return Plain.aircraftType(
                    "RANDOM",
                    "an aircraft drawn at random",
                    new Geometry(
                            new MeanChord(arm(14, 15), random.nextDouble(3, 5)),
                            new IndexFormula(arm(15, 16), scale * 1000, 50),
                            DisplayUnits.METRIC),
                    new MassLimits(scale * 90e3, scale * 89e3, scale * 80e3, scale * 75e3, scale * 1000),
                    cabin(),
                    holds(),
                    List.of(),
                    fuelSystem(),
                    List.of(envelope(Phase.ZERO_FUEL), envelope(Phase.TAKEOFF), envelope(Phase.FLIGHT)),
                    List.of());
        }

        Cabin cabin() {
            List<CabinZone> zones = new ArrayList<>();
            int count = random.nextInt(1, 7);
            for (int i = 0; i < count; i++) {
                zones.add(Plain.cabinZone("Z" + i, "zone " + i, arm(5 + 4 * i, 8 + 4 * i), random.nextInt(1, 40)));
            }
            List<CrewStation> crew = List.of(
                    new CrewStation("deck", CrewRole.FLIGHT, arm(2, 3), 2),
                    new CrewStation("front", CrewRole.CABIN, arm(4, 5), 2),
                    new CrewStation("back", CrewRole.CABIN, arm(28, 30), 2));
            MassScheme scheme = new MassScheme(
                    "drawn",
                    "drawn",
                    scale * 88,
                    scale * 70,
                    scale * 84,
                    scale * 35,
                    0,
                    scale * 13,
                    scale * 85,
                    scale * 75);
            Pantry pantry = new Pantry("standard", MassMoment.at(mass(0, 500), arm(4, 30)));
            return new Cabin(zones, crew, 2, 4, List.of(pantry), scheme);
        }

        List<Hold> holds() {
            List<Hold> holds = new ArrayList<>();
            int count = random.nextInt(1, 6);
            for (int i = 0; i < count; i++) {
                holds.add(new Hold("" + (i + 1), "hold " + (i + 1), arm(8, 25), scale * 5000, Optional.empty()));
            }
            return holds;
        }

        FuelSystem fuelSystem() {
            List<Tank> tanks = List.of(tank("left"), tank("right"), tank("centre"));
            List<FuelStage> burn = List.of(
                    new FuelStage(List.of(Plain.tankShare(2, 1, 0))),
                    new FuelStage(List.of(
                            Plain.tankShare(0, random.nextDouble(0.5, 2), scale * 500),
                            Plain.tankShare(1, 1, scale * 700))),
                    new FuelStage(List.of(Plain.tankShare(0, 1, 0), Plain.tankShare(1, 1, 0))));
            List<FuelStage> fill = List.of(
                    new FuelStage(List.of(Plain.tankShare(0, 1, scale * 5000), Plain.tankShare(1, 1, scale * 5000))),
                    new FuelStage(List.of(Plain.tankShare(2, 1, scale * 5000))));
            return new FuelSystem(tanks, burn, fill, List.of(), 0.8);
        }

        Tank tank(String id) {
            List<TankPoint> table = new ArrayList<>();
            for (int i = 1; i <= 5; i++) {
                table.add(Plain.tankPoint(scale * 1000 * i, arm(14, 18)));
            }
            return Plain.tank(id, id, scale * 5000, table);
        }

        Envelope envelope(Phase phase) {
            List<LimitPoint> forward = new ArrayList<>();
            List<LimitPoint> aft = new ArrayList<>();
            for (int i = 0; i <= 6; i++) {
                double massKg = scale * (1000 + i * 20000);
                forward.add(new LimitPoint(massKg, arm(11, 15)));
                aft.add(new LimitPoint(massKg, arm(16, 20)));
            }
            Straightness straight = random.nextBoolean() ? Straightness.ARM : Straightness.MOMENT;
            return new Envelope(
                    phase,
                    new LimitLine(Side.FORWARD, straight, forward),
                    new LimitLine(Side.AFT, Straightness.ARM, aft));
        }

        Load load(AircraftType type) {
            List<ZoneLoad> zones = type.cabin().zones().stream()
                    .map(zone -> new ZoneLoad(
                            new Passengers(random.nextInt(0, 9), random.nextInt(0, 9), random.nextInt(0, 9), 1, 1),
                            OptionalDouble.empty()))
                    .toList();
            List<HoldLoad> holds = type.holds().stream()
                    .map(hold -> new HoldLoad(mass(0, 2000), random.nextInt(0, 40)))
                    .toList();
            return new Load.ByPlace(zones, holds);
        }

        Fuel fuel(AircraftType type) {
            double[] tanksKg = type.fuel().tanks().stream()
                    .mapToDouble(tank -> mass(0, 5000))
                    .toArray();
            Amounts amounts = Amounts.of(tanksKg);
            double taxiKg = amounts.sum() * random.nextDouble(0, 0.05);
            return new Fuel.ByTank(amounts, taxiKg, (amounts.sum() - taxiKg) * random.nextDouble(0, 1));
        }
    }
}
