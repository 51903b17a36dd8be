package org.steelyard.demo;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntUnaryOperator;
import org.steelyard.grade.mark.Agreement;
import org.steelyard.grade.text.AnswerText;
import org.steelyard.grade.text.FigureText;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Candidates;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Slip;
import org.steelyard.grade.working.Working;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.SheetItem;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;

/**
 * Fills in load sheets as students do: with slips, and rounded on the way and at the end. For classes that are made, to
 * try the marking on; chance is handed in.
 */
public final class SampleStudent {

    private static final int FINE = 1000;
    private static final double MASS_NOISE_STEPS = 0.6;
    private static final double CG_NOISE_PERCENT_MAC = 0.01;
    private static final double TRIM_NOISE_UNITS = 0.01;

    private final Exercise exercise;
    private final IntUnaryOperator chance;

    /**
     * How the sheet is written.
     *
     * @param measure in what CGs are given
     * @param cgDecimals decimals of a CG
     * @param left items that are left blank
     */
    public record Habits(CgMeasure measure, int cgDecimals, Set<SheetItem> left) {

        public Habits {
            left = Set.copyOf(left);
        }
    }

    /**
     * For an exercise.
     *
     * @param exercise what was asked
     * @param chance gives a whole number from 0 to less than its argument
     */
    public SampleStudent(Exercise exercise, IntUnaryOperator chance) {
        this.exercise = exercise;
        this.chance = chance;
    }

    /**
     * A sheet with slips.
     *
     * @param slips the slips, none for a right sheet
     * @param habits how it is written
     * @return the figures
     */
    public Map<SheetItem, Claim> fill(List<Slip> slips, Habits habits) {
        Working working = new Working(exercise, slips);
        Map<SheetItem, Claim> claims = new EnumMap<>(SheetItem.class);
        for (SheetItem item : SheetItem.ALL) {
            if (!habits.left().contains(item)) {
                working.answer(item, habits.measure())
                        .ifPresent(answer -> claims.put(item, claim(item, answer, habits)));
            }
        }
        return claims;
    }

    /**
     * Whether slips show in what is handed in: a figure is not what it would be without one of them.
     *
     * @param slips the slips
     * @param habits how the sheet is written
     * @param agreed how far figures may differ without showing: a share of what marking would call right, as 1
     * @return true if leaving any one slip away changes a figure that is handed in
     */
    public boolean eachShows(List<Slip> slips, Habits habits, double agreed) {
        Working all = new Working(exercise, slips);
        for (Slip slip : slips) {
            List<Slip> others = slips.stream().filter(one -> !one.equals(slip)).toList();
            if (!differ(all, new Working(exercise, others), habits, agreed)) {
                return false;
            }
        }
        return true;
    }

    private boolean differ(Working one, Working other, Habits habits, double agreed) {
        Agreement agreement = new Agreement(exercise, fill(List.of(), habits));
        for (SheetItem item : SheetItem.ALL) {
            Optional<Answer> here = one.answer(item, habits.measure());
            Optional<Answer> there = other.answer(item, habits.measure());
            if (habits.left().contains(item) || here.isEmpty() || there.isEmpty()) {
                continue;
            }
            if (here.get() instanceof Answer.Figure number && there.get() instanceof Answer.Figure without) {
                double halfStep = Math.max(
                        number.step(),
                        agreement.figure(item).map(Claim.Figure::halfStep).orElse(0.0));
                double room = agreed * (2 * agreement.allowance(item, number.step()) + 2 * halfStep);
                if (Math.abs(number.value() - without.value()) > room) {
                    return true;
                }
            } else if (!exercise.isSameWord(here.get(), there.get())) {
                return true;
            }
        }
        return false;
    }

    private Claim claim(SheetItem item, Answer answer, Habits habits) {
        FigureText text = new FigureText(exercise.type());
        if (!(answer instanceof Answer.Figure number)) {
            return new Claim.Words(AnswerText.of(text, item, answer, habits.measure()));
        }
        return switch (item.kind()) {
            case MASS -> mass(number.value());
            case CG -> cg(item, number.value(), habits);
            default -> trim(text, number);
        };
    }

    private double noise(double most) {
        return most * (2.0 * chance.applyAsInt(FINE + 1) / FINE - 1);
    }

    private Claim mass(double massKg) {
        MassUnit unit = exercise.type().geometry().units().mass();
        double stepKg = Candidates.massStepKg(exercise.type().geometry().units());
        boolean whole = Math.abs(massKg / stepKg - Math.rint(massKg / stepKg)) < 1e-6;
        double written = Math.rint((massKg + (whole ? 0 : noise(MASS_NOISE_STEPS * stepKg))) / stepKg) * stepKg;
        String shown = FigureText.fixed(unit.fromKg(written), unit == MassUnit.TONNE ? 3 : 0)
                .replace(",", "");
        return new Claim.Figure(written, stepKg / 2, CgMeasure.PERCENT_MAC, shown + " " + unit.symbol());
    }

    private Claim cg(SheetItem item, double value, Habits habits) {
        double noisy = value + noise(CG_NOISE_PERCENT_MAC * exercise.perPercentMac(item, habits.measure()));
        LengthUnit length = exercise.type().geometry().units().length();
        double unit = habits.measure() == CgMeasure.ARM ? length.toM(1) : 1;
        int decimals = habits.cgDecimals() + (habits.measure() == CgMeasure.ARM ? armDecimals(length) : 0);
        double step = Math.pow(10, -decimals);
        double written = Math.rint(noisy / unit / step) * step;
        String name = switch (habits.measure()) {
            case PERCENT_MAC -> "% MAC";
            case ARM -> length.symbol();
            case INDEX -> "index";
        };
        String shown = FigureText.fixed(written, Math.max(0, decimals)).replace(",", "") + " " + name;
        return new Claim.Figure(written * unit, step * unit / 2, habits.measure(), shown);
    }

    /** So that an arm is about as fine as a % MAC. */
    private static int armDecimals(LengthUnit length) {
        return switch (length) {
            case M, FT -> 2;
            case CM, IN -> 0;
            case MM -> -1;
        };
    }

    private Claim trim(FigureText text, Answer.Figure number) {
        double step = number.step() == 0 ? 0.1 : number.step();
        double units = Math.floor((number.value() + noise(TRIM_NOISE_UNITS)) / step + 0.5) * step;
        return new Claim.Figure(units, step / 2, CgMeasure.PERCENT_MAC, text.trim(units, step));
    }
}
