package org.steelyard.analyse;

import java.util.function.DoublePredicate;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Whether a group lies apart from the rest: the rank sum test of Wilcoxon (1945) and of Mann and Whitney (1947) with
 * the normal approximation, corrected for ties and for continuity (Hollander and Wolfe, Nonparametric Statistical
 * Methods, section 4.1). It asks nothing of the shape of the distribution.
 */
final class RankTest {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final double[] sorted;
    private final double tieTerm;

    /**
     * Prepares tests against all values.
     *
     * @param sorted values of all groups, ascending
     */
    RankTest(double[] sorted) {
        this.sorted = sorted.clone();
        double sum = 0;
        for (int from = 0; from < sorted.length; ) {
            int to = from;
            while (to < sorted.length && sorted[to] == sorted[from]) {
                to++;
            }
            double ties = to - from;
            sum += ties * ties * ties - ties;
            from = to;
        }
        tieTerm = sum;
    }

    /**
     * The chance to be so far apart or farther if the group were drawn at random.
     *
     * @param group values of the group, which are among all
     * @return two-sided chance, 0 to 1; 1 where the group is all or nothing
     */
    double chance(double... group) {
        double n = sorted.length;
        double m = group.length;
        double rest = n - m;
        if (m == 0 || rest == 0) {
            return 1;
        }
        double rankSum = 0;
        for (double value : group) {
            rankSum += midRank(value);
        }
        double excess = Math.abs(rankSum - m * (n + 1) / 2) - 0.5;
        double variance = m * rest / 12 * (n + 1 - tieTerm / (n * (n - 1)));
        return variance <= 0 || excess <= 0
                ? 1
                : Math.min(1, 2 * NORMAL.cumulativeProbability(-excess / Math.sqrt(variance)));
    }

    private double midRank(double value) {
        return (first(at -> at >= value) + 1 + first(at -> at > value)) / 2.0;
    }

    private int first(DoublePredicate beyond) {
        int low = 0;
        int high = sorted.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (beyond.test(sorted[middle])) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }
}
