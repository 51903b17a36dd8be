package org.steelyard.grade.working;

import java.util.List;
import java.util.Optional;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.grade.working.Exercise.LimitReading;
import org.steelyard.grade.working.Slip.Target;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.type.IndexFormula;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Tolerance;

/**
 * The working of a load sheet with slips in it: a pure function from an exercise and the slips to every figure. Without
 * slips it gives what {@code balance} and {@code check} compute. Figures are worked out when asked for, and kept.
 */
public final class Working {

    private final Exercise exercise;
    private final List<Slip> slips;
    private Optional<MassMoment> zeroFuel = Optional.empty();
    private Optional<FuelStates> states = Optional.empty();
    private Optional<Allowed> allowed = Optional.empty();

    /** States that carry fuel, and the fuel in them. */
    record FuelStates(Balance balance, MassMoment ramp, MassMoment takeoff, MassMoment landing, double takeoffFuelKg) {}

    /** What the limits allow. */
    record Allowed(double takeoffKg, LimitingMass limitedBy, double trafficKg, double underloadKg) {}

    public Working(Exercise exercise, List<Slip> slips) {
        this.exercise = exercise;
        this.slips = List.copyOf(slips);
    }

    List<Slip> slips() {
        return slips;
    }

    /** The answer to an item; empty where the exercise does not give it. */
    public Optional<Answer> answer(SheetItem item, CgMeasure measure) {
        return switch (item.kind()) {
            case MASS -> massKg(item).map(kg -> new Answer.Figure(written(item, kg)));
            case CG ->
                state(item.phase().orElseThrow()).map(state -> new Answer.Figure(written(item, cg(state, measure))));
            case LIMIT -> allowed().map(limits -> new Answer.Limit(limits.limitedBy()));
            case TRIM -> trim();
            case VERDICT -> Optional.of(new Answer.Verdict(inLimits()));
        };
    }

    private Optional<Double> massKg(SheetItem item) {
        return switch (item) {
            case LIMITING_MASS -> allowed().map(Allowed::takeoffKg);
            case TRAFFIC_LOAD -> allowed().map(Allowed::trafficKg);
            case UNDERLOAD -> allowed().map(Allowed::underloadKg);
            default -> state(item.phase().orElseThrow()).map(MassMoment::massKg);
        };
    }

    /** A result as it is written: slips that befall the result alone. */
    private double written(SheetItem item, double value) {
        double written = value;
        for (Slip slip : slips) {
            boolean factor = slip.kind() == SlipKind.POUNDS || slip.kind() == SlipKind.KILOGRAMS;
            if (factor && slip.target() == Target.ITEM && isMassOf(slip, item)) {
                written *= slip.amount();
            } else if (slip.kind() == SlipKind.DIGITS_SWAPPED && isAt(slip, item)) {
                written += slip.amount();
            }
        }
        return written;
    }

    private static boolean isMassOf(Slip slip, SheetItem item) {
        return item.kind() == SheetItem.Kind.MASS && (slip.index() == -1 || isAt(slip, item));
    }

    private static boolean isAt(Slip slip, SheetItem item) {
        return slip.target() == Target.ITEM && slip.index() == SheetItem.ALL.indexOf(item);
    }

    // ------------------------------------------------------------ states

    public Optional<MassMoment> state(Phase phase) {
        if (phase == Phase.ZERO_FUEL) {
            return exercise.lines().isEmpty() ? Optional.empty() : Optional.of(zeroFuel());
        }
        if (exercise.loading().load() instanceof Load.TakeoffGiven given) {
            return phase == Phase.TAKEOFF ? Optional.of(given.takeoff()) : Optional.empty();
        }
        FuelStates all = fuelStates();
        return Optional.of(
                switch (phase) {
                    case RAMP -> all.ramp();
                    case TAKEOFF -> all.takeoff();
                    default -> all.landing();
                });
    }

    private MassMoment zeroFuel() {
        if (zeroFuel.isEmpty()) {
            MassMoment sum = MassMoment.ZERO;
            for (int i = 0; i < exercise.lines().size(); i++) {
                sum = sum.plus(line(i));
            }
            zeroFuel = Optional.of(roundedEarly(summed(sum, SheetItem.ZERO_FUEL_MASS, SheetItem.ZERO_FUEL_CG)));
        }
        return zeroFuel.get();
    }

    private MassMoment line(int index) {
        Line line = exercise.lines().get(index);
        double massKg = line.massKg();
        double armM = line.armM();
        for (Slip slip : slips) {
            boolean here = (slip.target() == Target.LINE && slip.index() == index)
                    || (slip.target() == Target.ZONES && line.kind() == Line.Kind.ZONE)
                    || (slip.target() == Target.HOLDS && line.kind() == Line.Kind.HOLD);
            if (here) {
                massKg = slip.kind() == SlipKind.CHILD_AS_ADULT ? massKg + line.childrenKg() : figure(slip, massKg);
                armM = slip.kind() == SlipKind.NEIGHBOURS_ARM ? slip.amount() : armM;
            }
        }
        return MassMoment.at(massKg, armM);
    }

    /** A given figure as the student took it. */
    private static double figure(Slip slip, double massKg) {
        return switch (slip.kind()) {
            case POUNDS, KILOGRAMS, VOLUME -> massKg * slip.amount();
            case DIGITS_SWAPPED -> massKg + slip.amount();
            case CREW_LEFT_OUT, PANTRY_LEFT_OUT, PLACE_LEFT_OUT, TAXI_NOT_OFF -> 0;
            case PLACE_TWICE, TAXI_TWICE -> 2 * massKg;
            default -> massKg;
        };
    }

    private double figure(Target target, double massKg) {
        double taken = massKg;
        for (Slip slip : slips) {
            if (slip.target() == target) {
                taken = figure(slip, taken);
            }
        }
        return taken;
    }

    /** The sum of a state's masses and moments with the slips in the sums themselves. */
    private MassMoment summed(MassMoment sum, SheetItem mass, SheetItem cg) {
        MassMoment slipped = sum;
        for (Slip slip : slips) {
            if (slip.kind() == SlipKind.ARITHMETIC && isAt(slip, mass)) {
                slipped = new MassMoment(slipped.massKg() + slip.amount(), slipped.momentKgM());
            } else if (slip.kind() == SlipKind.ARITHMETIC && isAt(slip, cg)) {
                slipped = new MassMoment(slipped.massKg(), slipped.momentKgM() + slip.amount());
            }
        }
        return slipped;
    }

    private MassMoment roundedEarly(MassMoment sum) {
        MassMoment rounded = sum;
        for (Slip slip : slips) {
            if (slip.kind() == SlipKind.ROUNDED_EARLY && slip.index() == Candidates.ROUND_MASS) {
                rounded = new MassMoment(Math.rint(sum.massKg() / slip.amount()) * slip.amount(), sum.momentKgM());
            } else if (slip.kind() == SlipKind.ROUNDED_EARLY && slip.index() == Candidates.ROUND_ARM) {
                rounded = MassMoment.at(sum.massKg(), Math.rint(sum.armM() / slip.amount()) * slip.amount());
            }
        }
        return rounded;
    }

    private boolean has(SlipKind kind) {
        for (Slip slip : slips) {
            if (slip.kind() == kind) {
                return true;
            }
        }
        return false;
    }

    FuelStates fuelStates() {
        if (states.isEmpty()) {
            states = Optional.of(withFuel());
        }
        return states.get();
    }

    private FuelStates withFuel() {
        Balance flown = flown(fuel());
        MassMoment ramp = summed(flown.ramp().orElseThrow(), SheetItem.RAMP_MASS, SheetItem.RAMP_CG);
        MassMoment rampSlip = ramp.minus(flown.ramp().get());
        MassMoment takeoff = summed(flown.takeoff().plus(rampSlip), SheetItem.TAKEOFF_MASS, SheetItem.TAKEOFF_CG);
        MassMoment takeoffSlip = takeoff.minus(flown.takeoff());
        MassMoment landing = flown.landing().orElseThrow();
        if (has(SlipKind.TRIP_OFF_RAMP)) {
            Fuel fuel = fuel();
            Balance noTaxi = flown(
                    fuel instanceof Fuel.ByTank byTank
                            ? new Fuel.ByTank(byTank.tanksKg(), 0, fuel.tripKg(), fuel.densityKgPerL())
                            : new Fuel.Total(((Fuel.Total) fuel).totalKg(), 0, fuel.tripKg(), fuel.densityKgPerL()));
            landing = noTaxi.landing().orElseThrow();
        }
        landing = summed(landing.plus(takeoffSlip), SheetItem.LANDING_MASS, SheetItem.LANDING_CG);
        boolean rampTaken = has(SlipKind.RAMP_FOR_TAKEOFF);
        return new FuelStates(
                flown,
                ramp,
                rampTaken ? ramp : takeoff,
                landing,
                flown.fuel().orElseThrow().takeoffKg().sum());
    }

    private Balance flown(Fuel fuel) {
        return Balancer.balance(
                exercise.loading().beforeChange().with(new Load.ZeroFuelGiven(positive(zeroFuel())), fuel),
                exercise.policy());
    }

    private static MassMoment positive(MassMoment state) {
        return state.massKg() > 0 ? state : new MassMoment(1, 0);
    }

    private Fuel fuel() {
        Fuel given = exercise.fuel();
        double taxiKg = figure(Target.TAXI, given.taxiKg());
        double tripKg = figure(Target.TRIP, given.tripKg());
        if (given instanceof Fuel.ByTank byTank) {
            double sumKg = byTank.tanksKg().sum();
            double factor = sumKg == 0 ? 1 : figure(Target.FUEL, sumKg) / sumKg;
            double[] tanksKg = byTank.tanksKg().toArray();
            for (int i = 0; i < tanksKg.length; i++) {
                tanksKg[i] *= factor;
            }
            return new Fuel.ByTank(Amounts.of(tanksKg), taxiKg, tripKg, given.densityKgPerL());
        }
        return new Fuel.Total(
                figure(Target.FUEL, ((Fuel.Total) given).totalKg()), taxiKg, tripKg, given.densityKgPerL());
    }

    // ------------------------------------------------------------ CG and trim

    MeanChord chord() {
        MeanChord chord = exercise.type().geometry().chord();
        for (Slip slip : slips) {
            if (slip.kind() == SlipKind.DATUM_FOR_LEMAC) {
                chord = new MeanChord(0, chord.lengthM());
            } else if (slip.kind() == SlipKind.LEMAC_OR_MAC) {
                chord = slip.index() == Candidates.OF_LENGTH
                        ? new MeanChord(chord.leadingEdgeM(), slip.amount())
                        : new MeanChord(slip.amount(), chord.lengthM());
            }
        }
        return chord;
    }

    private double cg(MassMoment state, CgMeasure measure) {
        return switch (measure) {
            case PERCENT_MAC -> chord().percentAt(state.armM());
            case ARM -> state.armM();
            case INDEX -> index().indexOf(state);
        };
    }

    private IndexFormula index() {
        IndexFormula right = exercise.type().geometry().index();
        return has(SlipKind.INDEX_CONSTANT) ? new IndexFormula(right.referenceArmM(), right.divisorKgM(), 0) : right;
    }

    private Optional<Answer> trim() {
        Optional<MassMoment> takeoff = state(Phase.TAKEOFF);
        Optional<TrimScale> scale = scale();
        if (takeoff.isEmpty() || scale.isEmpty()) {
            return Optional.empty();
        }
        Optional<MassMoment> at = has(SlipKind.ZERO_FUEL_CG_FOR_TRIM) ? state(Phase.ZERO_FUEL) : takeoff;
        double cg = chord().percentAt(at.orElse(takeoff.get()).armM());
        for (Slip slip : slips) {
            if (slip.kind() == SlipKind.ROUNDED_EARLY && slip.index() == Candidates.ROUND_TRIM_CG) {
                cg = Math.rint(cg);
            }
        }
        return TrimReading.read(scale.get(), cg, takeoff.get().massKg(), has(SlipKind.SCALE_WRONG_WAY))
                .map(units -> trim(scale.get(), units));
    }

    private Answer trim(TrimScale scale, double units) {
        Answer.Figure right = Answer.Figure.trim(scale, units);
        return has(SlipKind.TRIM_SIGN) ? new Answer.Figure(-units, right.step(), -right.setting()) : right;
    }

    private Optional<TrimScale> scale() {
        String flaps = exercise.loading().setting().flaps();
        for (Slip slip : slips) {
            flaps = slip.kind() == SlipKind.WRONG_FLAP ? slip.what() : flaps;
        }
        return exercise.type()
                .trimScale(Phase.TAKEOFF, flaps, exercise.loading().setting().thrustRating());
    }

    // ------------------------------------------------------------ limits

    private Optional<Allowed> allowed() {
        if (allowed.isEmpty() && exercise.balance().dryOperating().isPresent()) {
            allowed = Optional.of(limits());
        }
        return allowed;
    }

    private Allowed limits() {
        double[] takeoffKg = Limits.takeoffKg(exercise, statesOnly() ? exercise.right() : this);
        double zeroFuelRightKg = takeoffKg[0];
        for (Slip slip : slips) {
            Limits.slip(slip, takeoffKg, exercise.type().limits());
        }
        int least = 0;
        for (int i = 1; i < takeoffKg.length; i++) {
            least = Tolerance.isBelowKg(takeoffKg[i], takeoffKg[least]) ? i : least;
        }
        double dryKg = 0;
        double zeroFuelKg = zeroFuel().massKg();
        for (int i = 0; i < exercise.lines().size(); i++) {
            dryKg += exercise.lines().get(i).isDry() ? line(i).massKg() : 0;
        }
        double fuelKg = zeroFuelRightKg - exercise.type().limits().maxZeroFuelKg();
        double allowedKg = takeoffKg[least] + delta(SheetItem.LIMITING_MASS);
        double trafficKg = allowedKg - fuelKg - dryKg + delta(SheetItem.TRAFFIC_LOAD);
        double underloadKg = trafficKg - (zeroFuelKg - dryKg) + delta(SheetItem.UNDERLOAD);
        return new Allowed(allowedKg, Limits.limit(least), trafficKg, underloadKg);
    }

    private boolean statesOnly() {
        for (Slip slip : slips) {
            if (slip.target() == Target.TAXI && slip.index() == Candidates.STATES_ONLY) {
                return true;
            }
        }
        return false;
    }

    private double delta(SheetItem item) {
        double delta = 0;
        for (Slip slip : slips) {
            delta += slip.kind() == SlipKind.ARITHMETIC && isAt(slip, item) ? slip.amount() : 0;
        }
        return delta;
    }

    private boolean inLimits() {
        LimitReading reading = LimitReading.RIGHT;
        boolean flipped = false;
        for (Slip slip : slips) {
            if (slip.kind() == SlipKind.WRONG_PHASE && slip.index() >= Limits.VERDICTS) {
                reading = LimitReading.ALL.get(slip.index() - Limits.VERDICTS);
            }
            flipped |= slip.kind() == SlipKind.ENVELOPE_MISREAD;
        }
        return flipped != inLimits(reading);
    }

    private boolean inLimits(LimitReading reading) {
        Balance right = exercise.balance();
        if (exercise.loading().load() instanceof Load.TakeoffGiven) {
            return Verdicts.inLimits(exercise, reading, right);
        }
        FuelStates all = fuelStates();
        return Verdicts.inLimits(
                exercise,
                reading,
                new Balance(
                        right.dryOperating(),
                        Optional.of(read(positive(zeroFuel()))),
                        Optional.of(read(all.ramp())),
                        read(all.takeoff()),
                        Optional.of(read(all.landing())),
                        right.distribution(),
                        all.balance().fuel(),
                        all.balance().takeoffTrim(),
                        all.balance().landingTrim()));
    }

    /** A state where the student sees it, who works with another chord. */
    private MassMoment read(MassMoment state) {
        MeanChord right = exercise.type().geometry().chord();
        MeanChord taken = chord();
        return taken.equals(right) ? state : MassMoment.at(state.massKg(), right.armAt(taken.percentAt(state.armM())));
    }
}
