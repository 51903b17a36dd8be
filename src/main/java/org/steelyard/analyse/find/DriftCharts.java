package org.steelyard.analyse.find;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.random.RandomGenerator;
import org.apache.commons.math3.random.Well19937c;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.figure.MeanDifference;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.find.DriftChart.Shift;
import org.steelyard.analyse.find.DriftChart.Week;
import org.steelyard.analyse.part.PartPull;
import org.steelyard.analyse.part.PartTallies;

/** Makes the control charts. */
final class DriftCharts {

    private static final int FEWEST_WEEKS = 4;
    private static final double EACH_RULE = DriftChart.FALSE_ALARM / 2;
    private static final int DRAWS = 1_999;
    private static final long SEED = 20_261;

    private final SeasonFigures figures;
    private final PartTallies tallies;
    private final GroupNames<GroupKind.Week> allWeeks;

    DriftCharts(SeasonFigures figures, PartTallies tallies) {
        this.figures = figures;
        this.tallies = tallies;
        allWeeks = figures.groups(GroupKind.WEEK);
    }

    /** A chart for each type with four weeks and a spread within them. */
    List<DriftChart> all() {
        int[] weeks = allWeeks.inOrder();
        int width = allWeeks.groups();
        Grouped buckets = figures.grouped(Measure.TAKEOFF_CG, allWeeks);
        List<DriftChart> charts = new ArrayList<>();
        for (int type : figures.types().inOrder()) {
            WeekSums sums = new WeekSums();
            for (int week : weeks) {
                if (buckets.n(type * width + week) > 0) {
                    sums.add(week, buckets.values(type * width + week).sample());
                }
            }
            if (sums.weeks.size() >= FEWEST_WEEKS && sums.freedom() >= 1 && sums.withinSd() > 0) {
                charts.add(chart(type, sums));
            }
        }
        return charts;
    }

    private static final class WeekSums {

        private final List<Integer> weeks = new ArrayList<>();
        private final List<Long> counts = new ArrayList<>();
        private final List<Double> means = new ArrayList<>();
        private double within;
        private long n;

        void add(int week, MeanDifference.Sample sample) {
            weeks.add(week);
            counts.add(sample.n());
            means.add(sample.mean());
            within += sample.squares();
            n += sample.n();
        }

        long freedom() {
            return n - weeks.size();
        }

        double withinSd() {
            return Math.sqrt(within / freedom());
        }

        double[] n() {
            return counts.stream().mapToDouble(Long::doubleValue).toArray();
        }

        double[] means() {
            return means.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    private DriftChart chart(int type, WeekSums sums) {
        double[] counts = sums.n();
        double[] means = sums.means();
        double sd = sums.withinSd();
        double mean = mean(counts, means, 0, counts.length);
        double factor =
                new TDistribution(null, sums.freedom()).inverseCumulativeProbability(1 - EACH_RULE / 2 / counts.length);
        List<Week> weeks = new ArrayList<>();
        for (int i = 0; i < counts.length; i++) {
            double reach = factor * sd * Math.sqrt(1 / counts[i] - 1.0 / sums.n);
            weeks.add(new Week(
                    allWeeks.label(sums.weeks.get(i)), (long) counts[i], means[i], mean - reach, mean + reach));
        }
        return new DriftChart(
                figures.types().key(type), sums.n, mean, sd, factor, weeks, shift(type, sums, counts, means));
    }

    private Optional<Shift> shift(int type, WeekSums sums, double[] counts, double[] means) {
        Step step = Step.greatest(counts, means);
        int at = step.at();
        double chance = chance(counts, sums.freedom(), step.size() / sums.withinSd());
        if (chance >= EACH_RULE) {
            return Optional.empty();
        }
        List<Integer> after = sums.weeks.subList(at, sums.weeks.size());
        List<PartPull> reasons =
                tallies.reasons(allWeeks.grouping(), type, after::contains, week -> !after.contains(week));
        return Optional.of(new Shift(
                allWeeks.label(sums.weeks.get(at)),
                mean(counts, means, 0, at),
                mean(counts, means, at, counts.length),
                chance,
                reasons));
    }

    /** The share of seasons without shift, drawn with the same flights by week, that show as great a step. */
    private static double chance(double[] counts, long freedom, double step) {
        RandomGenerator random = new Well19937c(SEED);
        GammaDistribution squares = new GammaDistribution(random, freedom / 2.0, 2); // chi-square, drawn directly
        int asGreat = 1;
        double[] means = new double[counts.length];
        for (int draw = 0; draw < DRAWS; draw++) {
            for (int i = 0; i < counts.length; i++) {
                means[i] = random.nextGaussian() / Math.sqrt(counts[i]);
            }
            double sd = Math.sqrt(squares.sample() / freedom);
            asGreat += Step.greatest(counts, means).size() >= step * sd ? 1 : 0;
        }
        return asGreat / (DRAWS + 1.0);
    }

    /**
     * The greatest step between neighbouring weeks.
     *
     * @param at first week after it
     * @param size difference of the means of all flights on both sides, in units of its error for a spread of 1
     */
    private record Step(int at, double size) {

        static Step greatest(double[] counts, double[] means) {
            double n = Arrays.stream(counts).sum();
            double sum = 0;
            for (int i = 0; i < counts.length; i++) {
                sum += counts[i] * means[i];
            }
            Step greatest = new Step(1, -1);
            double nBefore = 0;
            double sumBefore = 0;
            for (int at = 1; at < counts.length; at++) {
                nBefore += counts[at - 1];
                sumBefore += counts[at - 1] * means[at - 1];
                double nAfter = n - nBefore;
                double difference = Math.abs((sum - sumBefore) / nAfter - sumBefore / nBefore);
                double size = difference / Math.sqrt(1 / nBefore + 1 / nAfter);
                greatest = size > greatest.size ? new Step(at, size) : greatest;
            }
            return greatest;
        }
    }

    private static double mean(double[] counts, double[] means, int from, int to) {
        double sum = 0;
        double n = 0;
        for (int i = from; i < to; i++) {
            sum += counts[i] * means[i];
            n += counts[i];
        }
        return sum / n;
    }
}
