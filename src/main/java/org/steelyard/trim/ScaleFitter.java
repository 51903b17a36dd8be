package org.steelyard.trim;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.steelyard.trim.RobustBentLine.Found;
import org.steelyard.trim.ScaleFit.FittedPoint;
import org.steelyard.trim.ScaleFit.Outlier;

/**
 * Fits a trim scale to recorded pairs of CG and setting, some of which may be wrong.
 *
 * <ol>
 *   <li>A straight line by medians of slopes ({@link TheilSenLine}) is the start: it stands up to 29 % of wrong pairs.
 *   <li>From there a line of one to six straight pieces that never rises with CG, by a bisquare M-estimator
 *       ({@link RobustBentLine}), with and without a term in take-off mass (only where there are forty pairs). Knots
 *       lie at equal shares of the pairs.
 *   <li>The number of pieces, and whether mass counts, by the least {@code D + p ln n}, where D is the robust deviance
 *       and p the number of coefficients: Schwarz's criterion made robust in the way of Ronchetti (Statistics and
 *       Probability Letters 3, 1985).
 *   <li>Intervals by resampling the pairs (bootstrap, percentile method, Efron and Tibshirani, 1993), with the form of
 *       the line kept.
 * </ol>
 *
 * A piecewise line was chosen over a smooth curve because that is what a scale in a type's file is, and over medians in
 * bands of CG because it keeps the slope within a band. No residual is taken to be smaller than a third of the
 * indicator's step, so that rounding to the step is never mistaken for precision, nor a slip of one step for an error.
 */
public final class ScaleFitter {

    /** The fewest pairs that a scale can be fitted to. */
    public static final int FEWEST_PAIRS = 8;

    /** The least span of CG in % MAC. */
    public static final double LEAST_SPAN_PERCENT_MAC = 2;

    private static final int MOST_FOR_SLOPES = 1200;
    private static final int MOST_FOR_FIT = 4000;
    private static final int MOST_PIECES = 6;
    private static final int PAIRS_FOR_A_PIECE = 8;
    private static final int PAIRS_FOR_MASS = 40;
    private static final double LEAST_MASS_SPREAD = 0.05;
    private static final double LOW = 0.025;
    private static final double HIGH = 0.975;

    private final List<TrimEvidence> all;
    private final double[] cgs;
    private final double[] masses;
    private final double[] settings;
    private final double referenceKg;
    private final boolean massesDiffer;
    private final double leastSd;

    private ScaleFitter(List<TrimEvidence> pairs, double stepUnits) {
        all = pairs.stream()
                .sorted(Comparator.comparingDouble(TrimEvidence::cgPercentMac))
                .toList();
        List<TrimEvidence> fitted = thinned(all, MOST_FOR_FIT);
        cgs = fitted.stream().mapToDouble(TrimEvidence::cgPercentMac).toArray();
        settings = fitted.stream().mapToDouble(TrimEvidence::settingUnits).toArray();
        boolean known = fitted.stream().allMatch(pair -> pair.massKg().isPresent());
        double[] kg =
                fitted.stream().mapToDouble(pair -> pair.massKg().orElse(0)).toArray();
        referenceKg = known ? Pairs.median(kg.clone()) : 0;
        massesDiffer = known
                && kg.length >= PAIRS_FOR_MASS
                && Arrays.stream(kg).max().orElse(0) - Arrays.stream(kg).min().orElse(0)
                        > LEAST_MASS_SPREAD * referenceKg;
        masses = Arrays.stream(kg).map(this::scaledMass).toArray();
        leastSd = stepUnits / 3;
    }

    /** Mass from the reference, in parts of it, so that all coefficients are of one size. */
    private double scaledMass(double massKg) {
        return massesDiffer ? massKg / referenceKg - 1 : 0;
    }

    /**
     * Fits a scale.
     *
     * @param pairs recorded pairs of one type, flap setting and thrust rating
     * @param stepUnits step of the indicator
     * @param resamples how many resamples the intervals come from; at least 40
     * @param below draws a whole number from zero to one less than its argument, each equally likely
     * @return the fitted scale
     * @throws IllegalArgumentException if there are too few pairs, their CGs span too little, or the settings turn
     *     nose-up as the CG moves aft
     */
    public static ScaleFit fit(List<TrimEvidence> pairs, double stepUnits, int resamples, IntUnaryOperator below) {
        requireEnough(pairs);
        return new ScaleFitter(pairs, stepUnits).fit(resamples, below);
    }

    private static void requireEnough(List<TrimEvidence> pairs) {
        if (pairs.size() < FEWEST_PAIRS) {
            throw new IllegalArgumentException(
                    "a scale needs at least " + FEWEST_PAIRS + " pairs of CG and setting, not " + pairs.size());
        }
        double least =
                pairs.stream().mapToDouble(TrimEvidence::cgPercentMac).min().orElseThrow();
        double most =
                pairs.stream().mapToDouble(TrimEvidence::cgPercentMac).max().orElseThrow();
        if (most - least < LEAST_SPAN_PERCENT_MAC) {
            throw new IllegalArgumentException("the CGs of the pairs must span at least " + LEAST_SPAN_PERCENT_MAC
                    + " % MAC for a scale, not " + Figure.of(most - least));
        }
    }

    /** Every so many-th of pairs in order of CG, where there are more than are needed. */
    private static List<TrimEvidence> thinned(List<TrimEvidence> pairs, int most) {
        int each = (pairs.size() + most - 1) / most;
        return IntStream.range(0, pairs.size())
                .filter(i -> i % each == 0)
                .mapToObj(pairs::get)
                .toList();
    }

    private ScaleFit fit(int resamples, IntUnaryOperator below) {
        TheilSenLine line = line();
        if (line.slopeLow() > 0) {
            throw new IllegalArgumentException("the settings turn nose-up as the CG moves aft, by "
                    + Figure.of(line.slope()) + " units for each % MAC; is the sign of the settings right");
        }
        Found found = choose(line);
        double[][] ends = intervals(found, resamples, below);
        return result(line, found, ends, resamples);
    }

    private TheilSenLine line() {
        List<TrimEvidence> some = thinned(all, MOST_FOR_SLOPES);
        return TheilSenLine.of(
                some.stream().mapToDouble(TrimEvidence::cgPercentMac).toArray(),
                some.stream().mapToDouble(TrimEvidence::settingUnits).toArray());
    }

    private Found choose(TheilSenLine line) {
        List<Found> candidates = new ArrayList<>();
        int pieces = Math.max(1, Math.min(MOST_PIECES, cgs.length / PAIRS_FOR_A_PIECE));
        for (boolean withMass : massesDiffer ? new boolean[] {false, true} : new boolean[] {false}) {
            for (int k = 1; k <= pieces; k++) {
                candidates.add(fit(new BentLine(knots(k), withMass), line));
            }
        }
        double sd = candidates.stream().mapToDouble(Found::sd).min().orElseThrow();
        return candidates.stream()
                .min(Comparator.comparingDouble(found -> criterion(found, sd)))
                .orElseThrow();
    }

    private double criterion(Found found, double sd) {
        double[] left = new double[cgs.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = settings[i] - found.valueAt(cgs[i], masses[i]);
        }
        return RobustBentLine.deviance(left, sd) + found.line().coefficients() * Math.log(cgs.length);
    }

    private Found fit(BentLine bent, TheilSenLine line) {
        RobustBentLine robust = new RobustBentLine(bent, cgs, masses, settings, leastSd);
        double[] residuals = new double[cgs.length];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = settings[i] - line.at(cgs[i]);
        }
        double[] knots = bent.knots();
        double[] start = new double[bent.coefficients()];
        start[0] = line.at(knots[0]);
        for (int k = 1; k < knots.length; k++) {
            start[k] = Math.max(0, -line.slope() * (knots[k] - knots[k - 1]));
        }
        return robust.from(residuals, start);
    }

    /** Places that cut the pairs into equal shares, each once. */
    private double[] knots(int pieces) {
        return IntStream.rangeClosed(0, pieces)
                .mapToDouble(k -> Pairs.percentile(cgs, k / (double) pieces))
                .distinct()
                .toArray();
    }

    private double[][] intervals(Found found, int resamples, IntUnaryOperator below) {
        double[] knots = found.line().knots();
        double[][] drawn = new double[knots.length][resamples];
        for (int r = 0; r < resamples; r++) {
            double[] again = resample(found, below);
            for (int k = 0; k < knots.length; k++) {
                drawn[k][r] = found.line().atKnot(again, k);
            }
        }
        double[][] ends = new double[knots.length][];
        for (int k = 0; k < knots.length; k++) {
            Arrays.sort(drawn[k]);
            ends[k] = new double[] {Pairs.percentile(drawn[k], LOW), Pairs.percentile(drawn[k], HIGH)};
        }
        return ends;
    }

    private double[] resample(Found found, IntUnaryOperator below) {
        int n = cgs.length;
        double[] cg = new double[n];
        double[] mass = new double[n];
        double[] setting = new double[n];
        for (int i = 0; i < n; i++) {
            int drawn = below.applyAsInt(n);
            cg[i] = cgs[drawn];
            mass[i] = masses[drawn];
            setting[i] = settings[drawn];
        }
        RobustBentLine robust = new RobustBentLine(found.line(), cg, mass, setting, leastSd);
        return robust.from(robust.residuals(found.coefficients()), found.coefficients())
                .coefficients();
    }

    private ScaleFit result(TheilSenLine line, Found found, double[][] ends, int resamples) {
        List<Outlier> outliers = new ArrayList<>();
        List<TrimEvidence> believed = new ArrayList<>();
        for (TrimEvidence pair : all) {
            double mass = scaledMass(pair.massKg().orElse(0));
            double residual = pair.settingUnits() - found.valueAt(pair.cgPercentMac(), mass);
            if (Math.abs(residual) >= RobustBentLine.CUT * found.sd()) {
                outliers.add(new Outlier(pair, residual));
            } else {
                believed.add(pair);
            }
        }
        outliers.sort(Comparator.comparingDouble((Outlier outlier) -> -Math.abs(outlier.residualUnits())));
        boolean byMass = found.line().coefficients() > found.line().knots().length;
        return new ScaleFit(
                points(found, ends, believed),
                byMass
                        ? OptionalDouble.of(found.coefficients()[found.line().coefficients() - 1] / referenceKg)
                        : OptionalDouble.empty(),
                byMass ? massRange(believed) : List.of(),
                byMass ? referenceKg : 0,
                all.size(),
                found.sd(),
                outliers,
                line,
                LeastSquaresLine.of(cgs, settings),
                resamples);
    }

    private static List<Double> massRange(List<TrimEvidence> believed) {
        double[] kg = believed.stream()
                .mapToDouble(pair -> pair.massKg().orElseThrow())
                .toArray();
        return List.of(
                Arrays.stream(kg).min().orElseThrow(), Arrays.stream(kg).max().orElseThrow());
    }

    /** The knots, drawn in to the CGs that believed pairs cover. */
    private static List<FittedPoint> points(Found found, double[][] ends, List<TrimEvidence> believed) {
        double from = believed.get(0).cgPercentMac();
        double to = believed.get(believed.size() - 1).cgPercentMac();
        double[] knots = found.line().knots();
        List<FittedPoint> points = new ArrayList<>();
        for (int k = 0; k < knots.length; k++) {
            boolean last = k == knots.length - 1;
            boolean beyond = k > 0 && !last && (knots[k] <= from || knots[k] >= to);
            if (!beyond) {
                double cg = k == 0 ? from : last ? to : knots[k];
                double value = found.valueAt(cg, 0);
                double shift = value - found.line().atKnot(found.coefficients(), k);
                points.add(new FittedPoint(cg, value, ends[k][0] + shift, ends[k][1] + shift));
            }
        }
        return points;
    }
}
