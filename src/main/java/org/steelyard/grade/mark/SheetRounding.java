package org.steelyard.grade.mark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Candidates;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Line;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

/**
 * How far the rounding that a sheet shows can bring its figures, and rounding on the way with it: whoever hands in
 * masses to 10 kg or whole index units has likely rounded each line so. The error of a sum of n rounded lines has a
 * standard deviation of step × √(n / 12); {@value #SPREADS} of them are allowed for.
 */
final class SheetRounding {

    private static final double SPREADS = 3.5;

    /** Rounding of the states that lead to a mass, in its last place. */
    private static final double MASS_STEPS = 1.6;

    /** A step is coarser than the given masses from here on, in steps of these. */
    private static final double COARSER = 1.5;

    /** Fewer masses than this show no coarser step than they are written in. */
    private static final int SHOWING = 4;

    /** A line of fewer steps than this is not rounded to them. */
    private static final double LEAST_STEPS = 5;

    private static final double WHOLE = 1e-4;

    /** A right figure is such a multiple to within so much of the last place that is written. */
    private static final double NEARLY = 0.6;

    private final Exercise exercise;
    private final Map<SheetItem, Claim.Figure> masses = new EnumMap<>(SheetItem.class);
    private final double massHalfKg;
    private final double cgHalfPercentMac;
    private final double indexStep;

    SheetRounding(Exercise exercise, Map<SheetItem, Claim> claims) {
        this.exercise = exercise;
        double massKg = 0;
        double percentMac = 0;
        double index = 0;
        for (Map.Entry<SheetItem, Claim> entry : claims.entrySet()) {
            SheetItem item = entry.getKey();
            if (entry.getValue() instanceof Claim.Figure figure) {
                if (item.kind() == SheetItem.Kind.MASS) {
                    masses.put(item, figure);
                    massKg = Math.max(massKg, figure.halfStep());
                } else if (item.kind() == SheetItem.Kind.CG) {
                    percentMac =
                            Math.max(percentMac, figure.halfStep() / exercise.perPercentMac(item, figure.measure()));
                    index = figure.measure() == CgMeasure.INDEX ? Math.max(index, 2 * figure.halfStep()) : index;
                }
            }
        }
        massHalfKg = massKg * coarseness();
        cgHalfPercentMac = percentMac;
        indexStep = index;
    }

    /**
     * By which power of ten the masses are coarser than they are written: all end in noughts that need not be there.
     */
    private double coarseness() {
        double factor = 1;
        while (masses.size() >= SHOWING && factor < 1000 && isShown(10 * factor)) {
            factor *= 10;
        }
        return factor;
    }

    /** Whether all masses are whole multiples, and not only because the right figures are. */
    private boolean isShown(double factor) {
        boolean byItself = true;
        for (Map.Entry<SheetItem, Claim.Figure> entry : masses.entrySet()) {
            double stepKg = 2 * entry.getValue().halfStep() * factor;
            if (stepKg == 0 || !isWhole(entry.getValue().value() / stepKg, WHOLE)) {
                return false;
            }
            byItself &= exercise.right(entry.getKey(), CgMeasure.ARM).orElse(new Answer.Verdict(true))
                            instanceof Answer.Figure right
                    && isWhole(right.value() / stepKg, NEARLY / factor);
        }
        return !byItself;
    }

    private static boolean isWhole(double value, double within) {
        return Math.abs(value - Math.rint(value)) <= within;
    }

    double massHalfKg() {
        return massHalfKg;
    }

    private double givenStepKg() {
        return Candidates.massStepKg(exercise.type().geometry().units());
    }

    private boolean isCoarse() {
        return 2 * massHalfKg > COARSER * givenStepKg();
    }

    /** How far a mass may be off by rounding on the way. */
    double massKg() {
        double onTheWayKg = isCoarse()
                ? SPREADS * spread(2 * massHalfKg) * Math.sqrt(rounded().size())
                : 0;
        return massHalfKg + Math.max(MASS_STEPS * givenStepKg(), onTheWayKg);
    }

    /** How far a CG may be off by rounding on the way, in % MAC, beyond moments and arms that were rounded. */
    double cgPercentMac() {
        MeanChord chord = exercise.type().geometry().chord();
        MassMoment state = exercise.balance().takeoff();
        double squares = 0;
        for (Line line : isCoarse() ? rounded() : List.<Line>of()) {
            squares += Math.pow(line.armM() - state.armM(), 2);
        }
        double byMassKgM = SPREADS * spread(2 * massHalfKg) * Math.sqrt(squares);
        double byIndexKgM = SPREADS
                * spread(indexStep)
                * Math.sqrt(loaded().size())
                * exercise.type().geometry().index().divisorKgM();
        double percentKgM = state.massKg() * chord.lengthM() / 100;
        return cgHalfPercentMac + Math.hypot(byMassKgM, byIndexKgM) / percentKgM;
    }

    private static double spread(double step) {
        return step / Math.sqrt(12);
    }

    private List<Line> loaded() {
        return exercise.lines().stream().filter(line -> line.massKg() > 0).toList();
    }

    /** Lines that rounding to the shown step can touch; the fuel of wings and centre counts as three. */
    private List<Line> rounded() {
        List<Line> lines = new ArrayList<>(loaded());
        lines.removeIf(line -> line.massKg() < LEAST_STEPS * 2 * massHalfKg);
        double fuelArmM =
                exercise.right().state(Phase.TAKEOFF).map(MassMoment::armM).orElse(0.0);
        for (int i = 0; i < Math.min(3, exercise.type().fuel().tanks().size()); i++) {
            lines.add(new Line(Line.Kind.STATE, "fuel", 1, fuelArmM, 0));
        }
        return lines;
    }
}
