package org.steelyard.samples;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.limit.ImbalanceLimit;
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
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Cabin;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.type.CrewStation;
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

/**
 * A small jet with round numbers, so that what a check should say can be seen without a calculator: chord from 16 m, 4
 * m long; every zone and hold 1 or 2 m from 17 m; basic mass 40,000 kg at 17 m (25 % MAC); limits of 20 to 30 % MAC.
 * What is not set is loaded so that everything sits at 17 m.
 */
public final class SampleJet {

    private final double[] zones = {10, 10, 10};
    private final double[] holdsKg = {1000, 0, 1000};
    private double[] tanksKg = {3000, 3000, 2000};
    private double taxiKg = 200;
    private double tripKg = 5000;
    private String flaps = "5";
    private Crew crew = Crew.STANDARD;
    private PerformanceLimits performance = PerformanceLimits.NONE;
    private Optional<Load> given = Optional.empty();
    private Optional<Fuel> givenFuel = Optional.empty();

    public static SampleJet loaded() {
        return new SampleJet();
    }

    public SampleJet zone(int index, int adults) {
        zones[index] = adults;
        return this;
    }

    public SampleJet hold(int index, double massKg) {
        holdsKg[index] = massKg;
        return this;
    }

    public SampleJet tanks(double leftKg, double rightKg, double tailKg) {
        tanksKg = new double[] {leftKg, rightKg, tailKg};
        return this;
    }

    public SampleJet burn(double taxi, double trip) {
        taxiKg = taxi;
        tripKg = trip;
        return this;
    }

    public SampleJet flaps(String setting) {
        flaps = setting;
        return this;
    }

    public SampleJet cabinCrew(int count) {
        crew = new Crew(OptionalInt.empty(), OptionalInt.of(count), OptionalDouble.empty(), "");
        return this;
    }

    public SampleJet takeoffLimit(double massKg) {
        performance = new PerformanceLimits(OptionalDouble.of(massKg), OptionalDouble.empty());
        return this;
    }

    public SampleJet load(Load load) {
        given = Optional.of(load);
        return this;
    }

    public SampleJet fuel(Fuel fuel) {
        givenFuel = Optional.of(fuel);
        return this;
    }

    public Loading loading() {
        Load load = given.orElseGet(() -> new Load.ByPlace(
                Arrays.stream(zones)
                        .mapToObj(count -> new ZoneLoad(Passengers.adults((int) count), OptionalDouble.empty()))
                        .toList(),
                Arrays.stream(holdsKg)
                        .mapToObj(massKg -> new HoldLoad(massKg, 0))
                        .toList()));
        Fuel fuel = givenFuel.orElseGet(() -> new Fuel.ByTank(Amounts.of(tanksKg), taxiKg, tripKg));
        return Plain.loading(
                new Origin("sample.csv", "", 2),
                new FlightIdent("S1", LocalDate.of(2026, 4, 1), "AAAAA", "BBBBB"),
                Plain.tail("TEST-1", type(), MassMoment.at(40_000, 17)),
                new FlightSetting(flaps, "", ""),
                crew,
                load,
                fuel,
                performance,
                OptionalDouble.empty(),
                List.of());
    }

    public static AircraftType type() {
        return Plain.aircraftType(
                "SAMPLE",
                "sample jet",
                new Geometry(new MeanChord(16, 4), new IndexFormula(17, 1000, 40), DisplayUnits.METRIC),
                new MassLimits(60_500, 60_000, 55_000, 52_000, 41_000),
                cabin(),
                holds(),
                List.of(new LoadGroup("rear", "holds 2 and 3", List.of(1, 2), List.of(), 4_000)),
                fuelSystem(),
                List.of(
                        envelope(Phase.ZERO_FUEL, 20, 30),
                        envelope(Phase.TAKEOFF, 20, 30),
                        envelope(Phase.FLIGHT, 19, 31),
                        envelope(Phase.LANDING, 20, 30)),
                List.of(takeoffScale(), landingScale()));
    }

    private static Cabin cabin() {
        MassScheme scheme = new MassScheme("sample", "round numbers", 100, 100, 100, 50, 0, 10, 100, 100);
        return new Cabin(
                List.of(
                        Plain.cabinZone("A", "zone A", 15, 30),
                        Plain.cabinZone("B", "zone B", 17, 30),
                        Plain.cabinZone("C", "zone C", 19, 30)),
                List.of(
                        new CrewStation("deck", CrewRole.FLIGHT, 17, 2),
                        new CrewStation("cabin", CrewRole.CABIN, 17, 4)),
                2,
                2,
                List.of(),
                scheme);
    }

    private static List<Hold> holds() {
        FloorLimit floor = new FloorLimit(2, 1.5, OptionalDouble.of(1_250), OptionalDouble.of(1_000));
        return List.of(
                new Hold("1", "hold 1", 15, 3_000, Optional.empty()),
                new Hold("2", "hold 2", 17, 3_000, Optional.of(floor)),
                new Hold("3", "hold 3", 19, 3_000, Optional.empty()));
    }

    private static FuelSystem fuelSystem() {
        List<FuelStage> burn = List.of(
                new FuelStage(List.of(Plain.tankShare(2, 1, 0))),
                new FuelStage(List.of(Plain.tankShare(0, 1, 0), Plain.tankShare(1, 1, 0))));
        List<FuelStage> fill = List.of(
                new FuelStage(List.of(Plain.tankShare(0, 1, 5_000), Plain.tankShare(1, 1, 5_000))),
                new FuelStage(List.of(Plain.tankShare(2, 1, 4_000))));
        return new FuelSystem(
                List.of(tank("left", 5_000, 17), tank("right", 5_000, 17), tank("tail", 4_000, 17)),
                burn,
                fill,
                List.of(new ImbalanceLimit(0, 1, 500)),
                0.8);
    }

    private static Tank tank(String id, double capacityKg, double armM) {
        return Plain.tank(id, id + " tank", capacityKg, List.of(Plain.tankPoint(capacityKg, armM)));
    }

    private static Envelope envelope(Phase phase, double forwardPercent, double aftPercent) {
        MeanChord chord = new MeanChord(16, 4);
        return new Envelope(
                phase, line(Side.FORWARD, chord.armAt(forwardPercent)), line(Side.AFT, chord.armAt(aftPercent)));
    }

    private static LimitLine line(Side side, double armM) {
        List<LimitPoint> points = new ArrayList<>();
        Collections.addAll(points, new LimitPoint(41_000, armM), new LimitPoint(60_000, armM));
        return new LimitLine(side, Straightness.ARM, points);
    }

    private static TrimScale takeoffScale() {
        TrimPoints law = new TrimPoints(List.of(new TrimPoint(19, 3), new TrimPoint(25, 0), new TrimPoint(31, -3)));
        return Plain.trimScale(Phase.TAKEOFF, "5", "", TrimUnit.UNITS, law, 0.25, -2, 2);
    }

    private static TrimScale landingScale() {
        TrimSlope law = new TrimSlope(new TrimPoint(25, 1), -0.5, new CgRange(15, 35));
        return Plain.trimScale(Phase.LANDING, "30", "", TrimUnit.UNITS, law, 0.5, -5, 6);
    }
}
