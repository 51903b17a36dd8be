package org.steelyard.grade.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.steelyard.balance.Balance;
import org.steelyard.balance.Balancer;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Exercise.LimitReading;
import org.steelyard.grade.working.Limits;
import org.steelyard.grade.working.TrimReading;
import org.steelyard.grade.working.Verdicts;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.unit.MassMoment;

/** What an item would be if it were worked out rightly from the student's own earlier figures. */
final class OwnFigures {

    private static final List<Phase> ORDER = List.of(Phase.ZERO_FUEL, Phase.RAMP, Phase.TAKEOFF, Phase.LANDING);

    /** So many half steps off, a limiting mass is still that of a limit: two or three rounded masses add up to it. */
    private static final double SAME_HALVES = 3;

    /** The figures as they stand, then each as heavy or light, forward or aft, as its rounding lets it be. */
    private static final int[][] WITHIN_ROUNDING = {{0, 0}, {1, 0}, {-1, 0}, {0, 1}, {0, -1}};

    private final Exercise exercise;
    private final Agreement agreement;

    /**
     * One way to an answer.
     *
     * @param answer what comes out
     * @param slack how far the rounding of the figures that went in can bring it
     * @param from the student's own figures that went in
     */
    record Route(Answer answer, double slack, List<SheetItem> from) {

        Route {
            from = List.copyOf(from);
        }
    }

    OwnFigures(Exercise exercise, Agreement agreement) {
        this.exercise = exercise;
        this.agreement = agreement;
    }

    List<Route> routes(SheetItem item) {
        return switch (item) {
            case LIMITING_MASS -> List.of();
            case LIMITED_BY -> limitedBy();
            case TRAFFIC_LOAD -> trafficLoad();
            case UNDERLOAD -> underload();
            case TRIM -> trim();
            case VERDICT -> verdict();
            default -> state(item);
        };
    }

    private static SheetItem item(Phase phase, SheetItem.Kind kind) {
        for (SheetItem item : SheetItem.ALL) {
            if (item.kind() == kind && item.phase().equals(Optional.of(phase))) {
                return item;
            }
        }
        throw new IllegalArgumentException("no load sheet asks for " + phase.label());
    }

    private Optional<Double> value(SheetItem item) {
        return agreement.figure(item).map(Claim.Figure::value);
    }

    private Optional<MassMoment> right(Phase phase) {
        return exercise.right().state(phase);
    }

    /** The student's state: what is missing of it is taken to be right. */
    private Optional<MassMoment> own(Phase phase) {
        return own(phase, 0, 0);
    }

    /** The same with mass and CG so many half steps of their rounding away. */
    private Optional<MassMoment> own(Phase phase, double massHalves, double cgHalves) {
        Optional<MassMoment> right = right(phase);
        SheetItem mass = item(phase, SheetItem.Kind.MASS);
        Optional<Double> massKg = value(mass).filter(kg -> kg > 0);
        Optional<Claim.Figure> cg = agreement.figure(item(phase, SheetItem.Kind.CG));
        if (right.isEmpty() || (massKg.isEmpty() && cg.isEmpty())) {
            return Optional.empty();
        }
        double kg = massKg.map(own -> own + massHalves * agreement.halfStep(mass))
                .orElse(right.get().massKg());
        return Optional.of(cg.map(figure -> state(kg, figure, figure.value() + cgHalves * figure.halfStep()))
                .orElse(MassMoment.at(kg, right.get().armM())));
    }

    private MassMoment state(double massKg, Claim.Figure cg, double value) {
        return switch (cg.measure()) {
            case PERCENT_MAC ->
                MassMoment.at(massKg, exercise.type().geometry().chord().armAt(value));
            case ARM -> MassMoment.at(massKg, value);
            case INDEX -> exercise.type().geometry().index().at(massKg, value);
        };
    }

    private List<SheetItem> from(Phase phase, boolean cgToo) {
        List<SheetItem> from = new ArrayList<>();
        SheetItem mass = item(phase, SheetItem.Kind.MASS);
        SheetItem cg = item(phase, SheetItem.Kind.CG);
        if (agreement.figure(mass).isPresent()) {
            from.add(mass);
        }
        if (cgToo && agreement.figure(cg).isPresent()) {
            from.add(cg);
        }
        return from;
    }

    private List<Route> state(SheetItem item) {
        List<Route> routes = new ArrayList<>();
        Phase phase = item.phase().orElseThrow();
        boolean cg = item.kind() == SheetItem.Kind.CG;
        Optional<MassMoment> right = right(phase);
        if (right.isEmpty()) {
            return routes;
        }
        for (int i = ORDER.indexOf(phase) - 1; i >= 0; i--) {
            Phase before = ORDER.get(i);
            List<SheetItem> from = from(before, cg);
            if (own(before).isPresent() && !from.isEmpty()) {
                double value = after(item, before, 0, 0);
                double slack =
                        Math.abs(after(item, before, 1, 0) - value) + Math.abs(after(item, before, 0, 1) - value);
                routes.add(new Route(new Answer.Figure(value), slack, from));
            }
        }
        SheetItem mass = item(phase, SheetItem.Kind.MASS);
        Optional<Double> ownKg = value(mass).filter(kg -> kg > 0);
        if (cg && ownKg.isPresent()) {
            double value = number(item, new MassMoment(ownKg.get(), right.get().momentKgM()));
            double halfKg = agreement.halfStep(mass);
            double beside = number(
                    item, new MassMoment(ownKg.get() + halfKg, right.get().momentKgM()));
            routes.add(new Route(new Answer.Figure(value), Math.abs(beside - value), List.of(mass)));
        }
        return routes;
    }

    /** A figure that is worked out from the student's own state before it. */
    private double after(SheetItem item, Phase before, double massHalves, double cgHalves) {
        MassMoment right = right(item.phase().orElseThrow()).orElseThrow();
        MassMoment own = own(before, massHalves, cgHalves).orElseThrow();
        return number(item, own.plus(right).minus(right(before).orElseThrow()));
    }

    private double number(SheetItem item, MassMoment state) {
        if (item.kind() == SheetItem.Kind.MASS) {
            return state.massKg();
        }
        double armM = state.massKg() == 0 ? 0 : state.armM();
        return switch (agreement.measure(item)) {
            case PERCENT_MAC -> exercise.type().geometry().chord().percentAt(armM);
            case ARM -> armM;
            case INDEX -> exercise.type().geometry().index().indexOf(state);
        };
    }

    private List<Route> limitedBy() {
        List<Route> routes = new ArrayList<>();
        Optional<Double> own = value(SheetItem.LIMITING_MASS);
        if (own.isPresent() && exercise.trafficLoad().isPresent()) {
            double[] takeoffKg = Limits.takeoffKg(exercise, exercise.right());
            double sameKg = SAME_HALVES * agreement.halfStep(SheetItem.LIMITING_MASS);
            for (LimitingMass limit : LimitingMass.values()) {
                if (Math.abs(takeoffKg[Limits.at(limit)] - own.get()) <= sameKg) {
                    routes.add(new Route(new Answer.Limit(limit), 0, List.of(SheetItem.LIMITING_MASS)));
                }
            }
        }
        return routes;
    }

    private List<Route> trafficLoad() {
        List<Route> routes = new ArrayList<>();
        Optional<Double> own = value(SheetItem.LIMITING_MASS);
        if (own.isPresent() && exercise.trafficLoad().isPresent()) {
            double rightKg = exercise.trafficLoad().get().allowedKg();
            double rightLimitKg = limitKg();
            routes.add(route(rightKg + own.get() - rightLimitKg, SheetItem.LIMITING_MASS));
        }
        return routes;
    }

    private double limitKg() {
        return exercise.right().answer(SheetItem.LIMITING_MASS, CgMeasure.ARM).orElseThrow()
                        instanceof Answer.Figure number
                ? number.value()
                : 0;
    }

    private List<Route> underload() {
        List<Route> routes = new ArrayList<>();
        if (exercise.trafficLoad().isEmpty()) {
            return routes;
        }
        double allowedKg = exercise.trafficLoad().get().allowedKg();
        double actualKg = exercise.trafficLoad().get().actualKg();
        double zeroFuelKg = right(Phase.ZERO_FUEL).orElseThrow().massKg();
        double takeoffKg = right(Phase.TAKEOFF).orElseThrow().massKg();
        Optional<Double> traffic = value(SheetItem.TRAFFIC_LOAD);
        Optional<Double> zeroFuel = value(SheetItem.ZERO_FUEL_MASS);
        Optional<Double> limit = value(SheetItem.LIMITING_MASS);
        Optional<Double> takeoff = value(SheetItem.TAKEOFF_MASS);
        traffic.ifPresent(kg -> routes.add(route(kg - actualKg, SheetItem.TRAFFIC_LOAD)));
        zeroFuel.ifPresent(kg -> routes.add(route(allowedKg - actualKg + zeroFuelKg - kg, SheetItem.ZERO_FUEL_MASS)));
        if (traffic.isPresent() && zeroFuel.isPresent()) {
            routes.add(route(
                    traffic.get() - actualKg + zeroFuelKg - zeroFuel.get(),
                    SheetItem.TRAFFIC_LOAD,
                    SheetItem.ZERO_FUEL_MASS));
        }
        limit.ifPresent(kg -> routes.add(route(kg - takeoffKg, SheetItem.LIMITING_MASS)));
        takeoff.ifPresent(kg -> routes.add(route(limitKg() - kg, SheetItem.TAKEOFF_MASS)));
        if (limit.isPresent() && takeoff.isPresent()) {
            routes.add(route(limit.get() - takeoff.get(), SheetItem.LIMITING_MASS, SheetItem.TAKEOFF_MASS));
        }
        return routes;
    }

    private Route route(double kg, SheetItem... from) {
        double slackKg = Stream.of(from).mapToDouble(agreement::halfStep).sum();
        return new Route(new Answer.Figure(kg), slackKg, List.of(from));
    }

    private List<Route> trim() {
        Optional<MassMoment> own = own(Phase.TAKEOFF);
        List<SheetItem> from = from(Phase.TAKEOFF, true);
        Optional<TrimScale> scale = exercise.type()
                .trimScale(
                        Phase.TAKEOFF,
                        exercise.loading().setting().flaps(),
                        exercise.loading().setting().thrustRating());
        if (own.isEmpty() || scale.isEmpty() || from.isEmpty()) {
            return List.of();
        }
        Optional<Double> units = trimUnits(scale.get(), own.get());
        double slack = 0;
        for (double halves : new double[] {-1, 1}) {
            Optional<Double> beside =
                    trimUnits(scale.get(), own(Phase.TAKEOFF, 0, halves).orElseThrow());
            slack = Math.max(
                    slack,
                    beside.flatMap(other -> units.map(at -> Math.abs(other - at)))
                            .orElse(0.0));
        }
        double most = slack;
        return units.map(at -> List.of(new Route(Answer.Figure.trim(scale.get(), at), most, from)))
                .orElse(List.of());
    }

    private Optional<Double> trimUnits(TrimScale scale, MassMoment takeoff) {
        double cg = exercise.type().geometry().chord().percentAt(takeoff.armM());
        return TrimReading.read(scale, cg, takeoff.massKg(), false);
    }

    private List<Route> verdict() {
        List<SheetItem> from = new ArrayList<>();
        for (Phase phase : ORDER) {
            from.addAll(from(phase, true));
        }
        if (from.isEmpty()) {
            return List.of();
        }
        if (own(Phase.ZERO_FUEL).or(exercise.balance()::zeroFuel).isEmpty()
                || exercise.loading().fuel() instanceof Fuel.NotGiven) {
            return List.of();
        }
        List<Route> routes = new ArrayList<>();
        for (int[] halves : WITHIN_ROUNDING) {
            Balance own = own(halves[0], halves[1]);
            routes.add(new Route(new Answer.Verdict(Verdicts.inLimits(exercise, LimitReading.RIGHT, own)), 0, from));
        }
        return routes;
    }

    private Balance own(double massHalves, double cgHalves) {
        Balance right = exercise.balance();
        Optional<MassMoment> zeroFuel =
                own(Phase.ZERO_FUEL, massHalves, cgHalves).or(right::zeroFuel);
        Balance flown = flown(zeroFuel.orElseThrow());
        return new Balance(
                right.dryOperating(),
                zeroFuel,
                own(Phase.RAMP, massHalves, cgHalves).or(flown::ramp),
                own(Phase.TAKEOFF, massHalves, cgHalves).orElse(flown.takeoff()),
                own(Phase.LANDING, massHalves, cgHalves).or(flown::landing),
                right.distribution(),
                flown.fuel(),
                flown.takeoffTrim(),
                flown.landingTrim());
    }

    private Balance flown(MassMoment zeroFuel) {
        return Balancer.balance(
                exercise.loading().beforeChange().with(new Load.ZeroFuelGiven(zeroFuel), exercise.fuel()),
                exercise.policy());
    }
}
