package org.steelyard.grade.mark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steelyard.grade.text.SlipText;
import org.steelyard.grade.working.Answer;
import org.steelyard.grade.working.Candidates;
import org.steelyard.grade.working.Exercise;
import org.steelyard.grade.working.Slip;
import org.steelyard.grade.working.Slip.Target;
import org.steelyard.grade.working.SlipKind;
import org.steelyard.grade.working.Working;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.SheetItem;

/**
 * Finds the slips that explain a sheet. Each candidate is worked through; it explains the sheet if every figure that
 * was entered is what comes out, within the rounding that the sheet shows, or follows from the student's own figures.
 * The first candidate is no slip at all: what rounding explains is no slip's doing. A slip that changes no figure of
 * the exercise is no candidate. What explains the sheet is ranked by posterior odds: how closely the figures agree,
 * times how common the slip is, shared out among its variants. Explanations within a factor of {@value #TOO_CLOSE} of
 * the best cannot be told apart from it. Pairs are tried where no single slip explains the sheet.
 */
final class Diagnoser {

    /** Odds below which two explanations cannot be told apart. */
    static final double TOO_CLOSE = 5;

    /** Farther than this off, in allowances, is another figure. */
    private static final double FARTHEST = 1;

    /** Odds of a figure that the slips do not give but the student's own figures do. */
    private static final double FOLLOWS = Math.log(0.05);

    /**
     * The farthest that finely written CGs may be off an explanation on average, as mean square; one may be farther.
     */
    private static final double LOOSE = 0.2;

    /** A slip hardly seen against a slip at full distance. */
    private static final double DISTANCE = 1.5;

    private static final int MOST_NAMED = 6;
    private static final double SAME = 1e-9;
    private static final List<CgMeasure> MEASURES = List.of(CgMeasure.values());
    private static final List<CgMeasure> ANY = List.of(CgMeasure.PERCENT_MAC);

    private final Exercise exercise;
    private final List<Candidate> candidates = new ArrayList<>();

    /** A slip with its working and the logarithm of its prior odds. */
    private record Candidate(Slip slip, Working working, double prior) {}

    private record Ranked(List<Slip> slips, double score) {}

    private Diagnoser(Exercise exercise) {
        this.exercise = exercise;
        List<Slip> slips = Candidates.of(exercise).stream()
                .filter(slip -> changes(new Working(exercise, List.of(slip))))
                .toList();
        Map<SlipKind, Integer> variants = new EnumMap<>(SlipKind.class);
        slips.forEach(slip -> variants.merge(slip.kind(), 1, Integer::sum));
        for (Slip slip : slips) {
            Working working = new Working(exercise, List.of(slip));
            double prior = Math.log(slip.kind().weight() / variants.get(slip.kind()));
            candidates.add(new Candidate(slip, working, prior));
        }
    }

    static Diagnoser of(Exercise exercise) {
        return new Diagnoser(exercise);
    }

    /** The slips that were tried. */
    List<Slip> slips() {
        return candidates.stream().map(Candidate::slip).toList();
    }

    private boolean changes(Working slipped) {
        for (SheetItem item : SheetItem.ALL) {
            List<CgMeasure> measures = item.kind() == SheetItem.Kind.CG ? MEASURES : ANY;
            for (CgMeasure measure : measures) {
                if (!isSame(exercise.right(item, measure), slipped.answer(item, measure))) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isSame(Optional<Answer> right, Optional<Answer> slipped) {
        if (right.isEmpty() || slipped.isEmpty()) {
            return right.isPresent() == slipped.isPresent();
        }
        if (right.get() instanceof Answer.Figure one && slipped.get() instanceof Answer.Figure other) {
            return Math.abs(one.value() - other.value()) <= SAME * Math.max(1, Math.abs(one.value()));
        }
        return exercise.isSameWord(right.get(), slipped.get());
    }

    /**
     * Explains a sheet.
     *
     * @param agreement the figures
     * @param wrong items that are wrong on their own
     * @param follows items that are wrong but follow from the student's own figures
     * @param following items that can follow from the student's own figures, right or wrong
     */
    Diagnosis diagnose(Agreement agreement, Set<SheetItem> wrong, Set<SheetItem> follows, Set<SheetItem> following) {
        if (wrong.isEmpty() && follows.isEmpty()) {
            return new Diagnosis.Nothing();
        }
        List<SheetItem> claimed =
                SheetItem.ALL.stream().filter(agreement::isReadable).toList();
        Sheet sheet = new Sheet(agreement, claimed, following);
        List<SheetItem> open = claimed.stream()
                .filter(item -> sheet.likelihood(exercise.right(), item) == Double.NEGATIVE_INFINITY)
                .toList();
        if (open.isEmpty()) {
            return new Diagnosis.Rounding(SheetItem.ALL.stream()
                    .filter(item -> wrong.contains(item) || follows.contains(item))
                    .toList());
        }
        List<Ranked> found = new ArrayList<>();
        for (Candidate one : candidates) {
            add(found, List.of(one.slip()), one.prior() + sheet.likelihood(one.working()));
        }
        if (found.isEmpty()) {
            pairs(sheet, open, found);
        }
        if (!found.isEmpty()) {
            return new Diagnosis.Found(explanations(best(found)), true);
        }
        return partly(agreement, claimed, open.get(0)).orElseGet(() -> new Diagnosis.CannotTell(open));
    }

    private static void add(List<Ranked> found, List<Slip> slips, double score) {
        if (score > Double.NEGATIVE_INFINITY) {
            found.add(new Ranked(slips, score));
        }
    }

    /** The first error alone, where the rest stays open: what explains it and breaks nothing before it. */
    private Optional<Diagnosis> partly(Agreement agreement, List<SheetItem> claimed, SheetItem error) {
        List<SheetItem> upToIt = claimed.stream()
                .filter(item -> item.compareTo(error) <= 0 || isSameState(item, error))
                .toList();
        Sheet sheet = new Sheet(agreement, upToIt, Set.of());
        List<Ranked> found = new ArrayList<>();
        for (Candidate one : candidates) {
            add(found, List.of(one.slip()), one.prior() + sheet.likelihood(one.working()));
        }
        return found.isEmpty() ? Optional.empty() : Optional.of(new Diagnosis.Found(explanations(best(found)), false));
    }

    private static boolean isSameState(SheetItem one, SheetItem other) {
        return one.phase().isPresent() && one.phase().equals(other.phase());
    }

    private void pairs(Sheet sheet, List<SheetItem> open, List<Ranked> found) {
        PairFilter filter = new PairFilter(
                exercise,
                sheet.agreement(),
                candidates.stream().map(Candidate::working).toList());
        List<SheetItem> right = sheet.claimed().stream()
                .filter(item -> !open.contains(item) && !sheet.follows().contains(item))
                .toList();
        filter.expect(open, right);
        for (int i = 0; i < candidates.size(); i++) {
            for (int j = i + 1; j < candidates.size(); j++) {
                Candidate one = candidates.get(i);
                Candidate other = candidates.get(j);
                if (filter.mayExplain(i, j) && canBothBe(one.slip(), other.slip())) {
                    List<Slip> both = List.of(one.slip(), other.slip());
                    double likelihood = sheet.likelihood(new Working(exercise, both));
                    add(found, both, one.prior() + other.prior() + likelihood);
                }
            }
        }
    }

    static boolean canBothBe(Slip one, Slip other) {
        boolean sameMethod = one.target() == Target.METHOD && one.kind() == other.kind();
        boolean sums = one.kind() == SlipKind.ARITHMETIC && other.kind() == SlipKind.ARITHMETIC;
        return !one.meets(other) && !sameMethod && !sums;
    }

    private static List<Ranked> best(List<Ranked> found) {
        found.sort(Comparator.comparingDouble(Ranked::score).reversed());
        double least = found.get(0).score() - Math.log(TOO_CLOSE);
        return found.stream()
                .filter(one -> one.score() >= least)
                .limit(MOST_NAMED)
                .toList();
    }

    /** The best in words; variants of which the student would be told the same are one explanation. */
    private List<Explanation> explanations(List<Ranked> best) {
        SlipText text = new SlipText(exercise);
        double top = best.get(0).score();
        double sum =
                best.stream().mapToDouble(one -> Math.exp(one.score() - top)).sum();
        Map<List<String>, Explanation> told = new LinkedHashMap<>();
        for (Ranked one : best) {
            List<String> sentences = one.slips().stream().map(text::sentence).toList();
            Explanation explanation = new Explanation(one.slips(), sentences, Math.exp(one.score() - top) / sum);
            told.merge(sentences, explanation, Diagnoser::together);
        }
        return List.copyOf(told.values());
    }

    private static Explanation together(Explanation one, Explanation other) {
        return new Explanation(one.slips(), one.sentences(), one.share() + other.share());
    }

    /** The figures of a sheet that must be explained. */
    private record Sheet(Agreement agreement, List<SheetItem> claimed, Set<SheetItem> follows) {

        /** Logarithm of the likelihood; minus infinity where a figure is not explained, or all of them but loosely. */
        double likelihood(Working working) {
            double sum = 0;
            for (SheetItem item : claimed) {
                double one = likelihood(working, item);
                if (one == Double.NEGATIVE_INFINITY) {
                    return one;
                }
                sum += one;
            }
            boolean loose = agreement.isFine() && looseness(working) > LOOSE;
            return loose ? Double.NEGATIVE_INFINITY : sum;
        }

        /** Mean square of how far the CGs that it gives are off. */
        private double looseness(Working working) {
            double squares = 0;
            int count = 0;
            for (SheetItem item : claimed) {
                if (item.kind() == SheetItem.Kind.CG) {
                    double distance = distance(working, item);
                    if (distance <= FARTHEST) {
                        squares += distance * distance;
                        count++;
                    }
                }
            }
            return count == 0 ? 0 : squares / count;
        }

        private double distance(Working working, SheetItem item) {
            return working.answer(item, agreement.measure(item))
                    .map(answer -> agreement.distance(item, answer))
                    .orElse(Double.POSITIVE_INFINITY);
        }

        double likelihood(Working working, SheetItem item) {
            double distance = distance(working, item);
            if (distance <= FARTHEST) {
                return -DISTANCE * distance * distance;
            }
            return follows.contains(item) ? FOLLOWS : Double.NEGATIVE_INFINITY;
        }
    }
}
