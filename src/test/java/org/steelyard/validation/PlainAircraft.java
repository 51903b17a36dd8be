package org.steelyard.validation;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.FloorLimit;
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
import org.steelyard.model.type.DisplayUnits;
import org.steelyard.model.type.FuelStage;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Pantry;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;

/** A loading with nothing but what a case gives; what it does not give never binds. */
final class PlainAircraft {

    /** A mass in kg that no case comes near to. */
    static final double VAST_KG = 1e7;

    private static final double LEAST_KG = 1e-3;
    private static final double FAR_M = 1e4;

    private final List<CabinZone> zones = new ArrayList<>();
    private final List<ZoneLoad> zoneLoads = new ArrayList<>();
    private final List<Hold> holds = new ArrayList<>();
    private final List<HoldLoad> holdLoads = new ArrayList<>();
    private final List<Tank> tanks = new ArrayList<>();
    private final List<Double> tanksKg = new ArrayList<>();
    private final List<Envelope> envelopes = new ArrayList<>();
    private MassMoment basic = MassMoment.at(1, 0);
    private MassMoment pantry = MassMoment.ZERO;
    private Optional<Load> given = Optional.empty();
    private MassScheme scheme = scheme(1, 1, 1, 1, 0, 1);
    private MeanChord chord = new MeanChord(0, 1);
    private MassLimits limits = new MassLimits(2 * VAST_KG, VAST_KG, VAST_KG, VAST_KG, LEAST_KG);
    private PerformanceLimits day = PerformanceLimits.NONE;
    private List<Integer> burnOrder = List.of();
    private double taxiKg;
    private double tripKg;
    private double marginalPercentMac;

    static MassScheme scheme(
            double maleKg, double femaleKg, double adultKg, double childKg, double infantKg, double bagKg) {
        return new MassScheme("case", "the case", maleKg, femaleKg, adultKg, childKg, infantKg, bagKg, 1, 1);
    }

    PlainAircraft basic(MassMoment state) {
        basic = state;
        return this;
    }

    /** Whatever else belongs to the dry operating state. */
    PlainAircraft operating(MassMoment items) {
        pantry = items;
        return this;
    }

    PlainAircraft state(Load load) {
        given = Optional.of(load);
        return this;
    }

    PlainAircraft scheme(MassScheme masses) {
        scheme = masses;
        return this;
    }

    PlainAircraft zone(String id, double armM, ZoneLoad load) {
        zones.add(Plain.cabinZone(id, id, armM, 1000));
        zoneLoads.add(load);
        return this;
    }

    PlainAircraft hold(String id, double armM, HoldLoad load, Optional<FloorLimit> floor) {
        holds.add(new Hold(id, id, armM, VAST_KG, floor));
        holdLoads.add(load);
        return this;
    }

    PlainAircraft tank(String id, double armM, double massKg, double capacityKg) {
        double fullKg = Math.max(capacityKg, LEAST_KG);
        tanks.add(Plain.tank(id, id, fullKg, List.of(Plain.tankPoint(fullKg, armM))));
        tanksKg.add(massKg);
        return this;
    }

    PlainAircraft burn(double taxi, double trip, List<Integer> order) {
        taxiKg = taxi;
        tripKg = trip;
        burnOrder = order;
        return this;
    }

    PlainAircraft limits(MassLimits masses, PerformanceLimits ofTheDay) {
        limits = masses;
        day = ofTheDay;
        return this;
    }

    PlainAircraft chord(MeanChord mac) {
        chord = mac;
        return this;
    }

    PlainAircraft marginal(double percentMac) {
        marginalPercentMac = percentMac;
        return this;
    }

    /** The same limits at every mass, for zero fuel and take-off. */
    PlainAircraft envelope(OptionalDouble forwardM, OptionalDouble aftM) {
        for (Phase phase : List.of(Phase.ZERO_FUEL, Phase.TAKEOFF)) {
            envelopes.add(new Envelope(
                    phase, level(Side.FORWARD, forwardM.orElse(-FAR_M)), level(Side.AFT, aftM.orElse(FAR_M))));
        }
        return this;
    }

    PlainAircraft envelope(Envelope envelope) {
        envelopes.add(envelope);
        return this;
    }

    static LimitLine level(Side side, double armM) {
        return new LimitLine(
                side, Straightness.ARM, List.of(new LimitPoint(LEAST_KG, armM), new LimitPoint(2 * VAST_KG, armM)));
    }

    Policy policy() {
        return Plain.policy(marginalPercentMac, 0, 0, 0, SharingRule.BY_CAPACITY);
    }

    Balance balance() {
        return Balancer.balance(loading(), policy());
    }

    Assessment assessment() {
        return Checker.check(loading(), balance(), policy());
    }

    Loading loading() {
        if (tanks.isEmpty()) {
            tank("none", 0, 0, 0);
        }
        if (envelopes.isEmpty()) {
            envelope(OptionalDouble.empty(), OptionalDouble.empty());
        }
        Load load = given.orElseGet(() -> new Load.ByPlace(zoneLoads, holdLoads));
        Amounts fuelKg =
                Amounts.of(tanksKg.stream().mapToDouble(Double::doubleValue).toArray());
        Fuel fuel = load instanceof Load.TakeoffGiven ? new Fuel.NotGiven() : new Fuel.ByTank(fuelKg, taxiKg, tripKg);
        return Plain.loading(
                new Origin("case.csv", "", 2),
                new FlightIdent("C1", LocalDate.of(2026, 4, 1), "AAAAA", "BBBBB"),
                Plain.tail("TEST-1", type(), basic),
                new FlightSetting("", "", ""),
                Crew.STANDARD,
                load,
                fuel,
                day,
                OptionalDouble.empty(),
                List.of());
    }

    private AircraftType type() {
        return Plain.aircraftType(
                "PLAIN",
                "what a case gives",
                new Geometry(chord, new IndexFormula(0, 1, 0), DisplayUnits.METRIC),
                limits,
                new Cabin(zones, List.of(), 0, 0, List.of(new Pantry("case", pantry)), scheme),
                holds,
                List.of(),
                fuelSystem(),
                envelopes,
                List.of());
    }

    private FuelSystem fuelSystem() {
        List<Integer> order = new ArrayList<>(burnOrder);
        List<FuelStage> fill = new ArrayList<>();
        for (int i = 0; i < tanks.size(); i++) {
            if (burnOrder.isEmpty()) {
                order.add(i);
            }
            fill.add(stage(i, tanks.get(i).capacityKg()));
        }
        return new FuelSystem(tanks, order.stream().map(i -> stage(i, 0)).toList(), fill, List.of(), 0.8);
    }

    private static FuelStage stage(int tank, double untilKg) {
        return new FuelStage(List.of(Plain.tankShare(tank, 1, untilKg)));
    }

    static ZoneLoad adults(int count) {
        return new ZoneLoad(Passengers.adults(count), OptionalDouble.empty());
    }
}
