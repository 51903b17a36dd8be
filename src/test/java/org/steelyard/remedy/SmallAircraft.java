package org.steelyard.remedy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
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
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;

/**
 * A made-up small aircraft, drawn from a seed, with so few persons and bags that every way to place them can be tried.
 */
final class SmallAircraft {

    private final SplittableRandom random;

    private SmallAircraft(long seed) {
        random = new SplittableRandom(seed);
    }

    static Loading loading(long seed) {
        return new SmallAircraft(seed).loading();
    }

    private double between(double from, double to) {
        return random.nextDouble(from, to);
    }

    private Loading loading() {
        AircraftType type = type();
        return Plain.loading(
                new Origin("small.csv", "", 2),
                new FlightIdent("S1", LocalDate.of(2026, 4, 1), "", ""),
                Plain.tail("TEST-2", type, MassMoment.at(between(1400, 1600), between(4.9, 5.1))),
                new FlightSetting("", "", ""),
                Crew.STANDARD,
                load(),
                fuel(),
                PerformanceLimits.NONE,
                OptionalDouble.empty(),
                List.of());
    }

    private AircraftType type() {
        Cabin cabin = new Cabin(
                List.of(
                        Plain.cabinZone("A", "zone A", 3.6, random.nextInt(1, 4)),
                        Plain.cabinZone("B", "zone B", 4.9, random.nextInt(1, 4)),
                        Plain.cabinZone("C", "zone C", 6.1, random.nextInt(1, 4))),
                List.of(),
                0,
                0,
                List.of(),
                new MassScheme("drawn", "drawn", 88, 70, 84, 35, 0, 13, 85, 75));
        List<Hold> holds = List.of(
                new Hold("1", "nose", 1.5, between(30, 60), Optional.empty()),
                new Hold("2", "tail", 8.2, between(30, 80), Optional.empty()));
        return Plain.aircraftType(
                "SMALL",
                "a small aircraft",
                new Geometry(new MeanChord(4.5, 1.6), new IndexFormula(5, 10, 20), DisplayUnits.METRIC),
                new MassLimits(2410, 2400, 2350, 2200, 1500),
                cabin,
                holds,
                List.of(new LoadGroup("aft", "aft of the wing", List.of(1), List.of(2), between(180, 320))),
                fuelSystem(),
                List.of(envelope(Phase.ZERO_FUEL), envelope(Phase.TAKEOFF), envelope(Phase.FLIGHT)),
                List.of());
    }

    private static FuelSystem fuelSystem() {
        Tank wing = Plain.tank("wing", "wing tank", 200, List.of(Plain.tankPoint(100, 5.1), Plain.tankPoint(200, 5.3)));
        Tank rear = Plain.tank("rear", "rear tank", 80, List.of(Plain.tankPoint(80, 6.4)));
        FuelStage both = new FuelStage(List.of(Plain.tankShare(1, 1, 0)));
        FuelStage last = new FuelStage(List.of(Plain.tankShare(0, 1, 0)));
        List<FuelStage> fill = List.of(
                new FuelStage(List.of(Plain.tankShare(0, 1, 200))), new FuelStage(List.of(Plain.tankShare(1, 1, 80))));
        return new FuelSystem(List.of(wing, rear), List.of(both, last), fill, List.of(), 0.72);
    }

    private Envelope envelope(Phase phase) {
        return new Envelope(phase, line(Side.FORWARD, 4.72, 4.9), line(Side.AFT, 5.05, 5.25));
    }

    private LimitLine line(Side side, double fromM, double toM) {
        List<LimitPoint> points = new ArrayList<>();
        for (int i = 0; i <= 4; i++) {
            points.add(new LimitPoint(1400 + 260 * i, between(fromM, toM)));
        }
        return new LimitLine(side, random.nextBoolean() ? Straightness.ARM : Straightness.MOMENT, points);
    }

    private Load load() {
        List<ZoneLoad> zones = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            zones.add(new ZoneLoad(
                    new Passengers(random.nextInt(0, 2), i == 1 ? 1 : 0, 0, i == 2 ? 1 : 0, 0),
                    OptionalDouble.empty()));
        }
        return new Load.ByPlace(
                zones, List.of(new HoldLoad(0, random.nextInt(0, 3)), new HoldLoad(0, random.nextInt(0, 6))));
    }

    private Fuel fuel() {
        double wingKg = between(60, 200);
        double rearKg = between(0, 80);
        return new Fuel.ByTank(Amounts.of(wingKg, rearKg), 4, between(0.3, 0.9) * (wingKg + rearKg - 4));
    }
}
