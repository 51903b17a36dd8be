package org.steelyard.check.chance;

import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Distribution;
import org.steelyard.balance.FuelBalance;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.FuelSystem;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;

/**
 * The spread of mass and moment of a flight's states, in closed form. All sources are independent of each other:
 *
 * <ul>
 *   <li>Passengers of a zone, with masses w and standard deviations τ, on seats drawn without replacement from n seats
 *       at distances x about the zone's arm a, of mean x̄ and variance σ²: the variance of mass is {@code Στ²}, the
 *       covariance {@code (a + x̄) Στ²}, the variance of moment {@code (a + x̄)² Στ² + σ² (Σ(w² + τ²) - ((Σw)² - Σw²) /
 *       (n - 1))}: two persons never share a seat, so their distances correlate by {@code -1 / (n - 1)} (the correction
 *       for a finite population, Cochran, Sampling Techniques, theorem 2.2).
 *   <li>Bags of a hold, with a standard deviation each, and the position of what lies in it: the variance of a product
 *       of independent factors.
 *   <li>Fuel: one relative error of density for all tanks, and one of quantity for each tank, which moves the moment by
 *       the arm of the layer at the surface. The errors are those of the fuel aboard in the state looked at.
 *   <li>Basic mass and basic CG: a product again.
 * </ul>
 *
 * <p>A mass that is given as weighed does not vary; where its persons sit does, unless their rows are known. After a
 * last-minute change the spread is still that of the load before it.
 */
public final class LoadSpread {

    private final AircraftType type;
    private final MassScheme scheme;
    private final SpreadRule rule;
    private final FuelSystem tanks;
    private double massVarianceKg2;
    private double momentVarianceKg2M2;
    private double covarianceKg2M;
    private double shiftKgM;

    private LoadSpread(Loading loading, SpreadRule rule, FuelSystem tanks) {
        this.type = loading.type();
        this.scheme = loading.scheme();
        this.rule = rule;
        this.tanks = tanks;
    }

    /**
     * All but the fuel of a flight whose load is known.
     *
     * @param loading the flight
     * @param balance its states
     * @param rule how uncertain each part is
     * @param policy how passengers given in total are shared out
     * @return the spread without fuel
     */
    public static LoadSpread of(Loading loading, Balance balance, SpreadRule rule, Policy policy) {
        LoadSpread spread = new LoadSpread(
                loading,
                rule,
                balance.fuel().map(FuelBalance::system).orElse(loading.type().fuel()));
        Distribution distribution = balance.distribution().orElseThrow();
        spread.basic(loading.tail().basic());
        spread.passengers(loading.load(), distribution, policy.sharing());
        spread.holds(loading.load(), distribution);
        return spread;
    }

    /**
     * The spread of a state with its fuel.
     *
     * @param phase the phase of the flight
     * @param state its mass and moment
     * @param tanksKg what each tank holds then, kg
     * @return state and spread
     */
    public StateSpread with(Phase phase, MassMoment state, Amounts tanksKg) {
        double mass = massVarianceKg2;
        double moment = momentVarianceKg2M2;
        double covariance = covarianceKg2M;
        double fuelKg = 0;
        double fuelKgM = 0;
        double quantity = square(rule.fuelQuantityPercent() / 100);
        for (int i = 0; i < tanksKg.size(); i++) {
            double tankKg = tanksKg.at(i);
            Tank tank = tanks.tanks().get(i);
            double layerM = layerArmM(tank, tankKg);
            fuelKg += tankKg;
            fuelKgM += tank.momentKgM(tankKg);
            mass += quantity * tankKg * tankKg;
            covariance += quantity * tankKg * tankKg * layerM;
            moment += quantity * square(tankKg * layerM);
        }
        double density = square(rule.fuelDensityPercent() / 100);
        return new StateSpread(
                phase,
                new MassMoment(state.massKg(), state.momentKgM() + shiftKgM),
                mass + density * fuelKg * fuelKg,
                moment + density * fuelKgM * fuelKgM,
                covariance + density * fuelKg * fuelKgM);
    }

    /**
     * The arm of the fuel at the surface: that of the layer of the arm table in which the surface lies.
     *
     * @param tank the tank
     * @param quantityKg what it holds, kg
     * @return arm in m from the datum, aft positive
     */
    public static double layerArmM(Tank tank, double quantityKg) {
        List<TankPoint> table = tank.armTable();
        int high = 0;
        while (high < table.size() - 1 && table.get(high).quantityKg() < quantityKg) {
            high++;
        }
        TankPoint above = table.get(high);
        if (high == 0) {
            return above.armM();
        }
        TankPoint below = table.get(high - 1);
        return (above.quantityKg() * above.armM() - below.quantityKg() * below.armM())
                / (above.quantityKg() - below.quantityKg());
    }

    private static double square(double value) {
        return value * value;
    }

    private void add(double massVariance, double covariance, double momentVariance) {
        massVarianceKg2 += massVariance;
        covarianceKg2M += covariance;
        momentVarianceKg2M2 += momentVariance;
    }

    private void basic(MassMoment basic) {
        double massVariance = square(rule.basicMassPercent() / 100 * basic.massKg());
        double armVariance =
                square(rule.basicCgPercentMac() / 100 * type.geometry().chord().lengthM());
        product(massVariance, basic.massKg(), basic.armM(), armVariance);
    }

    /** A mass at an arm, both uncertain and independent. */
    private void product(double massVariance, double massKg, double armM, double armVariance) {
        add(
                massVariance,
                massVariance * armM,
                massVariance * armM * armM + (massKg * massKg + massVariance) * armVariance);
    }

    private void passengers(Load load, Distribution distribution, SharingRule sharing) {
        List<CabinZone> zones = type.cabin().zones();
        if (load.zonesIfGiven().isPresent()) {
            for (int i = 0; i < zones.size(); i++) {
                given(zones.get(i), load.zonesIfGiven().get().get(i));
            }
        } else if (load instanceof Load.Totals totals) {
            total(persons(totals.passengers(), totals.passengersKg()), distribution, sharing);
        } else if (load instanceof Load.ByHold byHold) {
            total(persons(byHold.passengers(), byHold.passengersKg()), distribution, sharing);
        }
    }

    /** Where rows are known, everybody sits where the row is; only the masses vary. */
    private void given(CabinZone zone, ZoneLoad load) {
        Persons persons = persons(load.passengers(), load.actualKg());
        if (load.rows().isEmpty()) {
            zone(zone, persons);
        } else if (persons.massKg() > 0) {
            double armM = load.momentKgM(scheme, zone) / load.massKg(scheme);
            seats(armM, new SeatSpread(persons.count(), 0, 0), persons);
        }
    }

    private void holds(Load load, Distribution distribution) {
        double holdsKg = distribution.holdKg().sum();
        for (int i = 0; i < type.holds().size(); i++) {
            Hold hold = type.holds().get(i);
            if (load.holdsIfGiven().isPresent()) {
                HoldLoad given = load.holdsIfGiven().get().get(i);
                hold(hold, given.massKg(scheme), given.bags());
            } else if (holdsKg > 0) {
                double holdKg = distribution.holdKg().at(i);
                hold(hold, holdKg, bags(load) * holdKg / holdsKg);
            }
        }
    }

    private static int bags(Load load) {
        if (load instanceof Load.Totals totals) {
            return totals.hold().bags();
        }
        return load instanceof Load.ByZone byZone ? byZone.hold().bags() : 0;
    }

    private void hold(Hold hold, double massKg, double bags) {
        product(bags * square(rule.bagKg()), massKg, hold.armM(), square(rule.holdPositionM()));
    }

    /**
     * Sums over persons on seats.
     *
     * @param count how many
     * @param massKg sum of their masses
     * @param squaresKg2 sum of the squares of their masses
     * @param varianceKg2 sum of the variances of their masses
     */
    private record Persons(double count, double massKg, double squaresKg2, double varianceKg2) {

        Persons times(double share) {
            return new Persons(count * share, massKg * share, squaresKg2 * share, varianceKg2 * share);
        }
    }

    private Persons persons(Passengers passengers, OptionalDouble actualKg) {
        if (actualKg.isPresent()) {
            double massKg = actualKg.getAsDouble();
            double count = passengers.seated() > 0 ? passengers.seated() : massKg / scheme.adultKg();
            return new Persons(count, massKg, count > 0 ? massKg * massKg / count : 0, 0);
        }
        double massKg = 0;
        double squares = 0;
        double variance = 0;
        for (PassengerCategory category : CATEGORIES) {
            if (category != PassengerCategory.INFANT) {
                int count = passengers.count(category);
                massKg += count * scheme.massKg(category);
                squares += count * square(scheme.massKg(category));
                variance += count * square(rule.personKg(category));
            }
        }
        return new Persons(passengers.seated(), massKg, squares, variance);
    }

    private static final PassengerCategory[] CATEGORIES = PassengerCategory.values();

    private void zone(CabinZone zone, Persons persons) {
        if (persons.count() > 0) {
            seats(zone.armM(), SeatSpread.of(zone, persons.count(), rule.seating()), persons);
        }
    }

    private void seats(double armM, SeatSpread seats, Persons persons) {
        double atM = armM + seats.meanM();
        shiftKgM += seats.meanM() * persons.massKg();
        double together = seats.seats() > 1
                ? (square(persons.massKg()) - persons.squaresKg2()) / (Math.max(seats.seats(), persons.count()) - 1)
                : 0;
        double seating = seats.varianceM2() * Math.max(0, persons.squaresKg2() + persons.varianceKg2() - together);
        add(persons.varianceKg2(), persons.varianceKg2() * atM, persons.varianceKg2() * atM * atM + seating);
    }

    /** Shared out by capacity, a total of passengers sits anywhere in the cabin; by another rule, zone by zone. */
    private void total(Persons all, Distribution distribution, SharingRule sharing) {
        List<CabinZone> zones = type.cabin().zones();
        double seated = distribution.seatedByZone().sum();
        if (all.count() > 0 && sharing == SharingRule.BY_CAPACITY && rule.seating() == SeatingRule.RANDOM) {
            wholeCabin(zones, all);
        } else if (seated > 0) {
            for (int i = 0; i < zones.size(); i++) {
                zone(zones.get(i), all.times(distribution.seatedByZone().at(i) / seated));
            }
        }
    }

    private void wholeCabin(List<CabinZone> zones, Persons all) {
        double seats = 0;
        double sumM = 0;
        double squaresM2 = 0;
        for (CabinZone zone : zones) {
            SeatSpread inside = SeatSpread.of(zone, zone.seats(), SeatingRule.RANDOM);
            seats += zone.seats();
            sumM += zone.seats() * zone.armM();
            squaresM2 += zone.seats() * (square(zone.armM()) + inside.varianceM2());
        }
        double armM = sumM / seats;
        seats(armM, new SeatSpread(seats, 0, Math.max(0, squaresM2 / seats - armM * armM)), all);
    }
}
