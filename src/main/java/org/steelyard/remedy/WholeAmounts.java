package org.steelyard.remedy;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * A remedy in amounts that somebody can weigh. One amount alone is rounded up; of several, one down may go with another
 * up, so each way is worth a try. Which of them still does only the checks can say.
 */
final class WholeAmounts {

    /** Nearer to a whole amount than this it is one. */
    private static final double WHOLE = 1e-6;

    /** So many amounts are tried both ways, the others up only. */
    private static final int BOTH_WAYS = 4;

    private final double grainKg;
    private final ToDoubleFunction<RemedyStep> most;

    private WholeAmounts(double grainKg, ToDoubleFunction<RemedyStep> most) {
        this.grainKg = grainKg;
        this.most = most;
    }

    /**
     * The ways to round steps.
     *
     * @param grainKg what amounts that can be divided are to be a multiple of, in kg
     * @param most how much of a step's load is where it is taken from, which is taken whole rather than rounded up
     * @return the same steps with other amounts, those that take least first
     */
    static List<List<RemedyStep>> of(List<RemedyStep> steps, double grainKg, ToDoubleFunction<RemedyStep> most) {
        WholeAmounts whole = new WholeAmounts(grainKg, most);
        List<List<RemedyStep>> ways = new ArrayList<>();
        ways.add(List.of());
        int divided = 0;
        for (RemedyStep step : steps) {
            List<RemedyStep> choices = whole.choices(step, divided < BOTH_WAYS);
            divided += choices.size() - 1;
            ways = extended(ways, choices);
        }
        ways.sort(Comparator.comparingDouble(WholeAmounts::totalKg));
        return ways;
    }

    private List<RemedyStep> choices(RemedyStep step, boolean bothWays) {
        if (step.kind().whole()) {
            return List.of(step);
        }
        double grains = step.amount() / grainKg;
        RemedyStep up = step.withAmount(Math.min(Math.ceil(grains - WHOLE) * grainKg, most.applyAsDouble(step)));
        boolean isWhole = Math.ceil(grains - WHOLE) == Math.floor(grains + WHOLE);
        return isWhole || !bothWays ? List.of(up) : List.of(step.withAmount(Math.floor(grains) * grainKg), up);
    }

    private static List<List<RemedyStep>> extended(List<List<RemedyStep>> ways, List<RemedyStep> choices) {
        List<List<RemedyStep>> longer = new ArrayList<>();
        for (List<RemedyStep> way : ways) {
            for (RemedyStep choice : choices) {
                List<RemedyStep> with = new ArrayList<>(way);
                if (choice.amount() > 0) {
                    with.add(choice);
                }
                longer.add(with);
            }
        }
        return longer;
    }

    /** To the nearest gram, so that ways which take the same stay in their order. */
    private static double totalKg(List<RemedyStep> steps) {
        return Math.rint(1e3 * steps.stream().mapToDouble(RemedyStep::massKg).sum());
    }
}
