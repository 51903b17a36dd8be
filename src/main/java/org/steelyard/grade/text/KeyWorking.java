package org.steelyard.grade.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.balance.FuelBalance;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.text.FindingText;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Limits;
import org.steelyard.grade.working.Line;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.trim.TrimLaw;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Geometry;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.type.Tank;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.MassUnit;

/** The working of an exercise step by step, each sum as one would write it on paper. */
public final class KeyWorking {

    /**
     * A step.
     *
     * @param title what is worked out
     * @param lines its lines, aligned for letters of one width
     */
    public record Step(String title, List<String> lines) {

        public Step {
            lines = List.copyOf(lines);
        }
    }

    private static final int NAME = 22;
    private static final int NUMBER = 12;
    private static final int MOST_CHARS = 15;
    private static final double ON_THE_LIMIT = 1e-9;

    private final Exercise exercise;
    private final AircraftType type;
    private final FigureText text;
    private final List<Step> steps = new ArrayList<>();

    private KeyWorking(Exercise exercise) {
        this.exercise = exercise;
        this.type = exercise.type();
        this.text = new FigureText(type);
    }

    /**
     * Works an exercise.
     *
     * @param exercise an exercise with a load by place and fuel
     * @return the steps in order
     */
    public static List<Step> of(Exercise exercise) {
        KeyWorking working = new KeyWorking(exercise);
        working.zeroFuel();
        working.fuelStates();
        working.limits();
        working.trim();
        working.verdict();
        return List.copyOf(working.steps);
    }

    private static String left(String words, int width) {
        return String.format(Locale.ROOT, "%-" + width + "s", words);
    }

    private static String right(String number) {
        return String.format(Locale.ROOT, "%" + NUMBER + "s", number);
    }

    private String row(String name, double massKg, double armM, double momentKgM) {
        return left(name, NAME) + right(text.massNumber(massKg)) + " × " + right(text.armNumber(armM)) + " = "
                + String.format(Locale.ROOT, "%" + MOST_CHARS + "s", text.momentNumber(momentKgM));
    }

    private String sum(String name, MassMoment state) {
        return left(name, NAME) + right(text.massNumber(state.massKg())) + "   " + right("") + "   "
                + String.format(Locale.ROOT, "%" + MOST_CHARS + "s", text.momentNumber(state.momentKgM()));
    }

    private String rule() {
        return "-".repeat(NAME + 2 * NUMBER + MOST_CHARS + 6);
    }

    private String head() {
        return left("", NAME) + right(text.massUnitName()) + "   " + right(text.armUnitName()) + "   "
                + String.format(Locale.ROOT, "%" + MOST_CHARS + "s", text.momentUnitName());
    }

    /** Arm, % MAC and index of a state, each by its own division. */
    private void cg(List<String> lines, MassMoment state) {
        Geometry geometry = type.geometry();
        MeanChord chord = geometry.chord();
        lines.add("CG arm = " + text.momentNumber(state.momentKgM()) + " / " + text.massNumber(state.massKg()) + " = "
                + text.fineArmNumber(state.armM()) + " " + text.armUnitName());
        lines.add(
                "% MAC  = (" + text.fineArmNumber(state.armM()) + " − " + text.armNumber(chord.leadingEdgeM()) + ") / "
                        + text.armNumber(chord.lengthM()) + " × 100 = "
                        + text.cg(chord.percentAt(state.armM()), CgMeasure.PERCENT_MAC));
        double referenceM = geometry.index().referenceArmM();
        double divisor = geometry.index().divisorKgM();
        lines.add("index  = " + text.massNumber(state.massKg()) + " × (" + text.fineArmNumber(state.armM()) + " − "
                + text.armNumber(referenceM) + ") / " + text.momentNumber(divisor) + " + "
                + FigureText.points(geometry.index().constant()) + " = "
                + FigureText.fixed(geometry.index().indexOf(state), 2));
    }

    private void zeroFuel() {
        List<String> lines = new ArrayList<>();
        lines.add(head());
        boolean dry = true;
        MassMoment sum = MassMoment.ZERO;
        for (Line line : exercise.lines()) {
            if (dry && line.isTraffic()) {
                lines.add(rule());
                lines.add(sum("dry operating", sum));
                dry = false;
            }
            if (line.massKg() > 0) {
                lines.add(row(line.name(), line.massKg(), line.armM(), line.momentKgM()));
            }
            sum = sum.plus(MassMoment.at(line.massKg(), line.armM()));
        }
        lines.add(rule());
        lines.add(sum("zero fuel", sum));
        cg(lines, sum);
        steps.add(new Step("Zero fuel", lines));
    }

    private void fuelStates() {
        FuelBalance fuel = exercise.balance().fuel().orElseThrow();
        MassMoment zeroFuel = exercise.right().state(Phase.ZERO_FUEL).orElseThrow();
        state("Ramp", Phase.RAMP, zeroFuel, fuel.rampKg(), "");
        state(
                "Take-off",
                Phase.TAKEOFF,
                zeroFuel,
                fuel.takeoffKg(),
                "Taxi fuel of " + text.mass(fuel.taxiKg()) + " burnt in the burn order; what is left in the tanks:");
        state(
                "Landing",
                Phase.LANDING,
                zeroFuel,
                fuel.landingKg(),
                "Trip fuel of " + text.mass(fuel.tripKg()) + " burnt in the burn order; what is left in the tanks:");
    }

    private void state(String title, Phase phase, MassMoment zeroFuel, Amounts tanksKg, String before) {
        List<String> lines = new ArrayList<>();
        if (!before.isEmpty()) {
            lines.add(before);
        }
        lines.add(head());
        lines.add(sum("zero fuel", zeroFuel));
        for (int i = 0; i < tanksKg.size(); i++) {
            Tank tank = exercise.loading().tanks().tanks().get(i);
            double kg = tanksKg.at(i);
            if (kg > 0) {
                double moment = tank.momentKgM(kg);
                lines.add(row(tank.name(), kg, moment / kg, moment));
            }
        }
        MassMoment state = exercise.right().state(phase).orElseThrow();
        lines.add(rule());
        lines.add(sum(phase.label(), state));
        cg(lines, state);
        steps.add(new Step(title, lines));
    }

    private void limits() {
        if (exercise.trafficLoad().isEmpty()) {
            return;
        }
        FuelBalance fuel = exercise.balance().fuel().orElseThrow();
        double takeoffFuelKg = fuel.takeoffKg().sum();
        double tripKg = takeoffFuelKg - fuel.landingKg().sum();
        double taxiKg = fuel.rampKg().sum() - takeoffFuelKg;
        double[] takeoffKg = Limits.takeoffKg(exercise, exercise.right());
        List<String> lines = new ArrayList<>();
        for (LimitingMass limit : LimitingMass.values()) {
            double kg = takeoffKg[Limits.at(limit)];
            if (kg < Double.POSITIVE_INFINITY) {
                String with = switch (limit) {
                    case ZERO_FUEL -> plus(kg - takeoffFuelKg, takeoffFuelKg, "fuel at take-off", kg);
                    case LANDING, LANDING_PERFORMANCE -> plus(kg - tripKg, tripKg, "trip fuel", kg);
                    case RAMP ->
                        text.massNumber(kg + taxiKg) + " − taxi fuel " + text.massNumber(taxiKg) + " = "
                                + text.massNumber(kg);
                    case TAKEOFF, TAKEOFF_PERFORMANCE -> text.massNumber(kg);
                };
                lines.add(left(limit.label(), 36) + with);
            }
        }
        lines.add("least: " + right(SheetItem.LIMITING_MASS) + ", set by the " + right(SheetItem.LIMITED_BY));
        double dryKg = exercise.balance().dryOperating().orElseThrow().massKg();
        double actualKg = exercise.trafficLoad().get().actualKg();
        lines.add("traffic load allowed = " + right(SheetItem.LIMITING_MASS) + " − fuel at take-off "
                + text.massNumber(takeoffFuelKg) + " − dry operating mass " + text.massNumber(dryKg) + " = "
                + right(SheetItem.TRAFFIC_LOAD));
        lines.add("underload = " + right(SheetItem.TRAFFIC_LOAD) + " − traffic load " + text.massNumber(actualKg)
                + " = " + right(SheetItem.UNDERLOAD));
        steps.add(new Step("What the limits allow", lines));
    }

    private String plus(double limitKg, double fuelKg, String name, double sumKg) {
        return text.massNumber(limitKg) + " + " + name + " " + text.massNumber(fuelKg) + " = " + text.massNumber(sumKg);
    }

    private String right(SheetItem item) {
        CgMeasure measure = text.usualMeasure();
        return exercise.right(item, measure)
                .map(answer -> AnswerText.of(text, item, answer, measure))
                .orElse("not given");
    }

    private void trim() {
        if (exercise.balance().takeoffTrim().isEmpty()) {
            return;
        }
        TrimResult trim = exercise.balance().takeoffTrim().get();
        MassMoment takeoff = exercise.balance().takeoff();
        double cg = type.geometry().chord().percentAt(takeoff.armM());
        List<String> lines = new ArrayList<>();
        lines.add("scale for flaps " + trim.scale().flaps() + ", at " + text.mass(takeoff.massKg()) + " and "
                + text.cg(cg, CgMeasure.PERCENT_MAC));
        trim.trimUnits().ifPresent(units -> interpolation(lines, trim.scale().law(), cg, takeoff.massKg()));
        lines.add("to the indicator's step: " + right(SheetItem.TRIM));
        steps.add(new Step("Take-off trim", lines));
    }

    /** Between the two CGs beside it, each at the mass. */
    private void interpolation(List<String> lines, TrimLaw law, double cg, double massKg) {
        List<TrimPoint> points = law.pointsAt(massKg);
        int i = 1;
        while (i < points.size() - 1 && points.get(i).cgPercentMac() < cg) {
            i++;
        }
        TrimPoint low = points.get(i - 1);
        TrimPoint high = points.get(i);
        if (law instanceof TrimTable table) {
            lines.add(atMass(table, i - 1, massKg));
            lines.add(atMass(table, i, massKg));
        }
        lines.add(between(
                "at " + text.cg(cg, CgMeasure.PERCENT_MAC),
                new double[] {low.cgPercentMac(), cg, high.cgPercentMac()},
                "%.2f",
                low.trimUnits(),
                high.trimUnits()));
    }

    /** A column of CG between the two masses beside the mass. */
    private String atMass(TrimTable table, int column, double massKg) {
        Amounts masses = table.massesKg();
        int row = 1;
        while (row < masses.size() - 1 && masses.at(row) < massKg) {
            row++;
        }
        MassUnit unit = type.geometry().units().mass();
        return between(
                "at " + text.cg(table.cgsPercentMac().at(column), CgMeasure.PERCENT_MAC),
                new double[] {unit.fromKg(masses.at(row - 1)), unit.fromKg(massKg), unit.fromKg(masses.at(row))},
                unit == MassUnit.TONNE ? "%.3f" : "%.0f",
                table.trimUnits().get(row - 1).at(column),
                table.trimUnits().get(row).at(column));
    }

    private static String between(String what, double[] marks, String mark, double from, double to) {
        double at = from + (marks[1] - marks[0]) / (marks[2] - marks[0]) * (to - from);
        String place = mark + " − " + mark;
        return left(what + ":", NAME)
                + String.format(
                        Locale.ROOT,
                        "%.3f + (" + place + ") / (" + place + ") × (%.3f − %.3f) = %.3f",
                        from,
                        marks[1],
                        marks[0],
                        marks[2],
                        marks[0],
                        to,
                        from,
                        at)
                + "   (nose-up positive)";
    }

    private void verdict() {
        List<String> lines = new ArrayList<>();
        for (EnvelopeMargin margin : exercise.assessment().margins()) {
            lines.add(left(margin.phase().label(), 14)
                    + side(margin.forwardPercentMac(), "behind", "ahead of", "forward") + ", "
                    + side(margin.aftPercentMac(), "ahead of", "behind", "aft"));
        }
        for (Finding finding : exercise.assessment().findings()) {
            if (finding.severity() == Severity.BREACH && finding.code() != FindingCode.TRIM_RECORDED) {
                lines.add("outside: " + FindingText.sentence(finding, type));
            }
        }
        lines.add("verdict: " + right(SheetItem.VERDICT));
        steps.add(new Step("Verdict", lines));
    }

    private static String side(double roomPercentMac, String inside, String outside, String limit) {
        return String.format(
                Locale.ROOT,
                "%.2f %% MAC %s the %s limit",
                Math.abs(roomPercentMac),
                roomPercentMac < -ON_THE_LIMIT ? outside : inside,
                limit);
    }
}
