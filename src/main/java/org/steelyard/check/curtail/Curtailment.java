package org.steelyard.check.curtail;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import org.steelyard.balance.FuelFill;
import org.steelyard.check.chance.LoadSpread;
import org.steelyard.check.chance.SeatingAllowance;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.Movement;
import org.steelyard.model.limit.Side;
import org.steelyard.model.policy.SpreadRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.CabinZone;
import org.steelyard.model.type.Hold;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.Tolerance;

/**
 * Curtails the certified envelopes of a type by what a load sheet with standard masses and zones does not show, after
 * FAA AC 120-27 (aircraft weight and balance control, the part on operational envelopes) and manufacturers' manuals
 * that follow it: seating within zones, and what moves, are added as they are; masses of passengers and bags, the
 * position of what lies in holds, density and quantity of fuel and basic mass and CG are standard deviations, each for
 * the fullest load that the mass allows, combined by the root of the sum of squares and multiplied by a factor.
 *
 * <p>A mass m off its figure at arm a moves the CG against a limit at arm l as a moment {@code m (a - l)} does. The
 * moment taken off changes with mass, as at the lightest mass there can be no passengers. So each vertex is moved by
 * the greatest moment up to its neighbours, and vertices are put where a quarter, a half, three quarters and all of the
 * passengers can be aboard, or of what the holds take where that is more, as in a freighter: between vertices no less
 * is taken off than there. What is burnt is not taken off, as the whole fuel path is checked.
 */
public final class Curtailment {

    private static final int FUEL_STEPS = 32;

    private final AircraftType type;
    private final SpreadRule rule;
    private final double factor;

    private Curtailment(AircraftType type, SpreadRule rule, double factor) {
        this.type = type;
        this.rule = rule;
        this.factor = factor;
    }

    /**
     * The operational envelopes of a type.
     *
     * @param type the type
     * @param rule what varies
     * @param factor how many standard deviations are taken off, as 1.96 for 95 % between both limits
     * @return one for each envelope of the type
     * @throws IllegalArgumentException if nothing is left between the limits
     */
    public static List<CurtailedEnvelope> of(AircraftType type, SpreadRule rule, double factor) {
        Curtailment curtailment = new Curtailment(type, rule, factor);
        return type.envelopes().stream().map(curtailment::envelope).toList();
    }

    private CurtailedEnvelope envelope(Envelope certified) {
        List<CurtailedPoint> forward = line(certified, certified.forward());
        List<CurtailedPoint> aft = line(certified, certified.aft());
        try {
            Envelope operational =
                    new Envelope(certified.phase(), line(certified.forward(), forward), line(certified.aft(), aft));
            return new CurtailedEnvelope(certified, operational, forward, aft);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException(
                    "nothing is left of the " + certified.phase().label() + " envelope: " + e.getMessage(), e);
        }
    }

    private static LimitLine line(LimitLine certified, List<CurtailedPoint> points) {
        return new LimitLine(
                certified.side(),
                certified.straight(),
                points.stream().map(CurtailedPoint::operational).toList());
    }

    private List<CurtailedPoint> line(Envelope envelope, LimitLine line) {
        List<LimitPoint> vertices = vertices(line);
        List<List<Contribution>> contributions = new ArrayList<>();
        double[] totals = new double[vertices.size()];
        for (int i = 0; i < totals.length; i++) {
            contributions.add(contributions(envelope, line.side(), vertices.get(i)));
            totals[i] = total(contributions.get(i));
        }
        List<CurtailedPoint> points = new ArrayList<>();
        for (int i = 0; i < totals.length; i++) {
            double takenKgM = Math.max(
                    totals[i], Math.max(totals[Math.max(0, i - 1)], totals[Math.min(totals.length - 1, i + 1)]));
            LimitPoint at = vertices.get(i);
            double shiftM = takenKgM / at.massKg();
            double armM = line.side() == Side.FORWARD ? at.armM() + shiftM : at.armM() - shiftM;
            points.add(new CurtailedPoint(
                    at, new LimitPoint(at.massKg(), armM), contributions.get(i), totals[i], takenKgM));
        }
        return points;
    }

    /** Those of the limit, and the masses at which parts of the passengers, or of a freighter's load, can be aboard. */
    private List<LimitPoint> vertices(LimitLine line) {
        List<LimitPoint> vertices = new ArrayList<>(line.points());
        TreeSet<Double> masses = new TreeSet<>();
        for (int quarter = 1; quarter <= 4; quarter++) {
            masses.add(lightestKg() + fullKg() * quarter / 4);
        }
        for (double massKg : masses) {
            boolean between =
                    Tolerance.isAboveKg(massKg, line.minMassKg()) && Tolerance.isBelowKg(massKg, line.maxMassKg());
            if (between
                    && line.points().stream()
                            .noneMatch(point -> Tolerance.isWithinKg(point.massKg(), massKg, massKg))) {
                vertices.add(new LimitPoint(massKg, line.armAtM(massKg)));
            }
        }
        vertices.sort(Comparator.comparingDouble(LimitPoint::massKg));
        return vertices;
    }

    private double lightestKg() {
        return type.limits().minFlightKg();
    }

    private double fullKg() {
        double holdsKg = type.holds().stream().mapToDouble(Hold::maxKg).sum();
        return Math.max(type.cabin().seats() * adultKg(), holdsKg);
    }

    private double adultKg() {
        return type.cabin().scheme().adultKg();
    }

    private static double total(List<Contribution> contributions) {
        double added = 0;
        double squares = 0;
        for (Contribution contribution : contributions) {
            added += contribution.byChance() ? 0 : contribution.kgM();
            squares += contribution.byChance() ? contribution.kgM() * contribution.kgM() : 0;
        }
        return added + Math.sqrt(squares);
    }

    private List<Contribution> contributions(Envelope envelope, Side side, LimitPoint at) {
        double loadKg = Math.max(0, at.massKg() - lightestKg());
        int passengers = (int) Math.min(type.cabin().seats(), Math.floor(loadKg / adultKg() + 1e-9));
        List<Contribution> list = new ArrayList<>();
        SeatingAllowance seating = SeatingAllowance.of(type.cabin().zones(), adultKg(), side);
        list.add(new Contribution("seating within zones", false, seating.kgM(passengers)));
        for (Movement movement : type.movements()) {
            boolean now = !movement.inFlightOnly() || envelope.phase() == Phase.FLIGHT;
            if (now && (!movement.needsPassengers() || passengers > 0)) {
                list.add(new Contribution(movement.name(), false, movement.kgM(side)));
            }
        }
        chance(list, "masses of passengers", passengersKgM(passengers, at.armM()));
        chance(list, "masses of bags", bagsKgM(loadKg, at.armM()));
        chance(list, "position in holds", positionKgM(loadKg));
        if (envelope.phase() != Phase.ZERO_FUEL) {
            chance(list, "fuel density", fuelKgM(loadKg, at.armM(), true));
            chance(list, "fuel quantity", fuelKgM(loadKg, at.armM(), false));
        }
        double widthM = envelope.aft().armAtM(at.massKg()) - envelope.forward().armAtM(at.massKg());
        chance(list, "basic mass", rule.basicMassPercent() / 100 * lightestKg() * widthM);
        double chordM = type.geometry().chord().lengthM();
        chance(list, "basic CG", rule.basicCgPercentMac() / 100 * chordM * lightestKg());
        return list;
    }

    private void chance(List<Contribution> list, String cause, double sdKgM) {
        list.add(new Contribution(cause, true, factor * sdKgM));
    }

    /** So many passengers, farthest from the limit first, each off by the adults' standard deviation. */
    private double passengersKgM(int passengers, double limitM) {
        List<CabinZone> farthest = type.cabin().zones().stream()
                .sorted(Comparator.comparingDouble((CabinZone zone) -> -Math.abs(zone.armM() - limitM)))
                .toList();
        double variance = 0;
        int left = passengers;
        for (CabinZone zone : farthest) {
            int here = Math.min(left, zone.seats());
            variance += here * square(rule.adultKg() * (zone.armM() - limitM));
            left -= here;
        }
        return Math.sqrt(variance);
    }

    private double bagsKgM(double loadKg, double limitM) {
        List<Hold> farthest = type.holds().stream()
                .sorted(Comparator.comparingDouble((Hold hold) -> -Math.abs(hold.armM() - limitM)))
                .toList();
        double bagKg = type.cabin().scheme().bagKg();
        double variance = 0;
        double leftKg = loadKg;
        for (Hold hold : farthest) {
            double hereKg = Math.min(leftKg, hold.maxKg());
            variance += hereKg / bagKg * square(rule.bagKg() * (hold.armM() - limitM));
            leftKg -= hereKg;
        }
        return Math.sqrt(variance);
    }

    private double positionKgM(double loadKg) {
        List<Hold> largest = type.holds().stream()
                .sorted(Comparator.comparingDouble((Hold hold) -> -hold.maxKg()))
                .toList();
        double squares = 0;
        double leftKg = loadKg;
        for (Hold hold : largest) {
            double hereKg = Math.min(leftKg, hold.maxKg());
            squares += square(hereKg);
            leftKg -= hereKg;
        }
        return rule.holdPositionM() * Math.sqrt(squares);
    }

    /** The quantity of fuel, filled in order, that an error moves farthest. */
    private double fuelKgM(double mostKg, double limitM, boolean density) {
        double capacityKg = Math.min(mostKg, type.fuel().capacityKg());
        double greatest = 0;
        for (int i = 0; i <= FUEL_STEPS; i++) {
            Amounts tanksKg = FuelFill.of(type.fuel(), capacityKg * i / FUEL_STEPS);
            double sum = 0;
            double squares = 0;
            for (int t = 0; t < tanksKg.size(); t++) {
                Tank tank = type.fuel().tanks().get(t);
                sum += tank.momentKgM(tanksKg.at(t)) - tanksKg.at(t) * limitM;
                squares += square(tanksKg.at(t) * (LoadSpread.layerArmM(tank, tanksKg.at(t)) - limitM));
            }
            greatest = Math.max(
                    greatest,
                    density
                            ? rule.fuelDensityPercent() / 100 * Math.abs(sum)
                            : rule.fuelQuantityPercent() / 100 * Math.sqrt(squares));
        }
        return greatest;
    }

    private static double square(double value) {
        return value * value;
    }
}
