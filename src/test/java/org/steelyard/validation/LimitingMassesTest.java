package org.steelyard.validation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.balance.FuelBalance;
import org.steelyard.check.flight.LimitingMasses;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.unit.MassMoment;

/** Limiting masses, traffic load, underload, room for fuel, and the masses of the states. */
class LimitingMassesTest extends PublishedCases {

    private static final double VAST_KG = PlainAircraft.VAST_KG;

    LimitingMassesTest() {
        super("limiting-masses", 53, 1);
    }

    @Override
    void answer(Given given, Answers answers) {
        OptionalDouble allowedKg = given.massKg("allowed");
        if (allowedKg.isPresent()) {
            double actualKg = given.massKg("traffic").orElseThrow();
            TrafficLoad load = new TrafficLoad(allowedKg.getAsDouble(), actualKg, LimitingMass.ZERO_FUEL);
            answers.mass("underload", load.underloadKg());
            return;
        }
        new Sheet(given, answers).answer();
    }

    /** The aircraft of a case that is worked forwards. */
    static PlainAircraft aircraft(Given given, Answers answers) {
        return new Sheet(given, answers).aircraft();
    }

    /** One case as a load sheet, forwards through the balance, backwards from a take-off mass by subtraction. */
    private static final class Sheet {

        private final Given given;
        private final Answers answers;
        private final OptionalDouble dryKg;
        private final OptionalDouble zeroFuelKg;
        private final OptionalDouble takeoffKg;
        private final double trafficKg;
        private final double taxiKg;
        private final double takeoffFuelKg;
        private final double tripKg;
        private final double tankKg;
        private final MassLimits limits;
        private final PerformanceLimits day;

        Sheet(Given given, Answers answers) {
            this.given = given;
            this.answers = answers;
            OptionalDouble basicKg = given.massKg("basic");
            this.dryKg = basicKg.isPresent()
                    ? OptionalDouble.of(basicKg.getAsDouble() + given.sumKg("items"))
                    : given.massKg("dry");
            this.zeroFuelKg = given.massKg("zeroFuel");
            this.takeoffKg = given.massKg("takeoff");
            this.trafficKg = given.massKg("traffic", 0);
            this.taxiKg = given.massKg("taxi", 0);
            OptionalDouble blockKg = given.massKg("block");
            double partsKg = given.massKg("trip", 0) + given.sumKg("reserves");
            this.takeoffFuelKg = given.massKg("takeoffFuel", blockKg.orElse(partsKg + taxiKg) - taxiKg);
            OptionalDouble landingFuelKg = given.massKg("landingFuel");
            this.tripKg =
                    landingFuelKg.isPresent() ? takeoffFuelKg - landingFuelKg.getAsDouble() : given.massKg("trip", 0);
            this.tankKg = given.massKg("tankCapacity", VAST_KG);
            this.limits = limits(given);
            this.day = new PerformanceLimits(given.massKg("dayTakeoff"), given.massKg("dayLanding"));
        }

        private static MassLimits limits(Given given) {
            double maxTakeoffKg = given.massKg("maxTakeoff", VAST_KG);
            return new MassLimits(
                    given.massKg("maxRamp", 2 * VAST_KG),
                    maxTakeoffKg,
                    given.massKg("maxLanding", maxTakeoffKg),
                    given.massKg("maxZeroFuel", maxTakeoffKg),
                    1);
        }

        void answer() {
            if (takeoffKg.isPresent()) {
                backwards(MassMoment.at(takeoffKg.getAsDouble(), 0));
            }
            PlainAircraft aircraft = aircraft();
            Balance balance = aircraft.balance();
            FuelBalance fuel = balance.fuel().orElseThrow();
            Assessment assessment = aircraft.assessment();
            limits(fuel, balance.takeoff().massKg());
            if (dryKg.isPresent() && zeroFuelKg.isEmpty()) {
                traffic(fuel, assessment.trafficLoad().orElseThrow(), balance);
            }
            if (dryKg.isPresent() || zeroFuelKg.isPresent()) {
                states(balance, fuel);
                answers.word("massHigh", massHigh(assessment) ? "yes" : "no");
            }
        }

        private static boolean massHigh(Assessment assessment) {
            return assessment.findings().stream().anyMatch(finding -> finding.code() == FindingCode.MASS_HIGH);
        }

        private PlainAircraft aircraft() {
            PlainAircraft aircraft = new PlainAircraft()
                    .limits(limits, day)
                    .tank("all", 0, takeoffFuelKg + taxiKg, tankKg)
                    .burn(taxiKg, tripKg, List.of())
                    .hold("all", 0, new HoldLoad(trafficKg, 0), Optional.empty());
            dryKg.ifPresent(massKg -> aircraft.basic(MassMoment.at(massKg, 0)));
            zeroFuelKg.ifPresent(massKg -> aircraft.state(new Load.ZeroFuelGiven(MassMoment.at(massKg, 0))));
            return aircraft;
        }

        private void backwards(MassMoment takeoff) {
            MassMoment fuel = MassMoment.at(given.massKg("totalFuel", takeoffFuelKg), 0)
                    .minus(MassMoment.at(given.massKg("unusable", 0), 0));
            MassMoment zeroFuel = takeoff.minus(fuel);
            answers.mass("zeroFuel", zeroFuel.massKg());
            answers.mass("dry", zeroFuel.minus(MassMoment.at(trafficKg, 0)).massKg());
            dryKg.ifPresent(massKg -> {
                MassMoment dry = MassMoment.at(massKg, 0);
                answers.mass("useful", takeoff.minus(dry).massKg());
                answers.mass("traffic", zeroFuel.minus(dry).massKg());
            });
        }

        private void limits(FuelBalance fuel, double plannedKg) {
            LimitingMasses limiting = limiting(limits, day, fuel);
            double actualKg = takeoffKg.orElse(plannedKg);
            double tankRoomKg = tankKg - fuel.rampKg().sum();
            double roomKg = limiting.fuelRoomKg(actualKg, tankRoomKg);
            answers.mass("maxTakeoff", limiting.maxTakeoffKg());
            answers.mass("takeoffByTakeoff", limiting.takeoffKg(LimitingMass.TAKEOFF));
            answers.mass("takeoffByZeroFuel", limiting.takeoffKg(LimitingMass.ZERO_FUEL));
            answers.mass("takeoffByLanding", limiting.takeoffKg(LimitingMass.LANDING));
            answers.mass("takeoffByDayLanding", limiting.takeoffKg(LimitingMass.LANDING_PERFORMANCE));
            answers.mass("fuelRoom", roomKg);
            answers.mass("takeoffFuelAtMost", fuel.takeoffKg().sum() + roomKg);
            answers.mass("blockAtMost", fuel.rampKg().sum() + roomKg);
            answers.mass("roomByTank", Math.min(VAST_KG, tankRoomKg));
            only().forEach((name, one) -> answers.mass(
                    "roomBy" + name, limiting(one, PerformanceLimits.NONE, fuel).fuelRoomKg(actualKg, VAST_KG)));
        }

        private static LimitingMasses limiting(MassLimits limits, PerformanceLimits day, FuelBalance fuel) {
            return LimitingMasses.of(
                    limits,
                    day,
                    fuel.rampKg().sum(),
                    fuel.takeoffKg().sum(),
                    fuel.landingKg().sum());
        }

        /** One limit at a time. */
        private Map<String, MassLimits> only() {
            return Map.of(
                    "Takeoff",
                    new MassLimits(2 * VAST_KG, limits.maxTakeoffKg(), limits.maxTakeoffKg(), limits.maxTakeoffKg(), 1),
                    "Landing",
                    new MassLimits(2 * VAST_KG, VAST_KG, limits.maxLandingKg(), VAST_KG, 1),
                    "ZeroFuel",
                    new MassLimits(2 * VAST_KG, VAST_KG, VAST_KG, limits.maxZeroFuelKg(), 1));
        }

        private void traffic(FuelBalance fuel, TrafficLoad load, Balance balance) {
            MassMoment dry = balance.dryOperating().orElseThrow();
            answers.mass("allowed", load.allowedKg());
            answers.mass("underload", load.underloadKg());
            answers.mass(
                    "operating",
                    dry.plus(MassMoment.at(fuel.takeoffKg().sum(), 0)).massKg());
            answers.mass(
                    "zeroFuelAtMost",
                    dry.plus(MassMoment.at(load.allowedKg(), 0)).massKg());
            only().forEach((name, one) -> answers.mass(
                    "allowedBy" + name,
                    limiting(one, PerformanceLimits.NONE, fuel)
                            .trafficLoad(dry.massKg(), 0)
                            .allowedKg()));
        }

        private void states(Balance balance, FuelBalance fuel) {
            answers.mass("zeroFuel", balance.zeroFuel().orElseThrow().massKg());
            if (takeoffKg.isEmpty()) {
                answers.mass(
                        "takeoff", balance.state(Phase.TAKEOFF).orElseThrow().massKg());
            }
            answers.mass("landing", balance.landing().orElseThrow().massKg());
            answers.mass("takeoffFuel", fuel.takeoffKg().sum());
            given.densityKgPerL()
                    .ifPresent(density -> answers.inside(
                            Dimension.VOLUME,
                            "block",
                            org.steelyard.model.unit.VolumeUnit.L.fromKg(
                                    fuel.rampKg().sum(), density)));
            if (dryKg.isPresent() && zeroFuelKg.isPresent()) {
                answers.mass(
                        "traffic",
                        MassMoment.at(zeroFuelKg.getAsDouble(), 0)
                                .minus(MassMoment.at(dryKg.getAsDouble(), 0))
                                .massKg());
            }
        }
    }
}
