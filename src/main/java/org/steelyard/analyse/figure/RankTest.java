package org.steelyard.analyse.figure;

import java.util.Arrays;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * Whether a group lies apart from the rest: the rank sum test of Wilcoxon (1945) and of Mann and Whitney (1947) with
 * the normal approximation, corrected for ties and for continuity (Hollander and Wolfe, Nonparametric Statistical
 * Methods, section 4.1). It asks nothing of the shape of the distribution.
 */
public final class RankTest {

    private static final NormalDistribution NORMAL = new NormalDistribution(null, 0, 1);

    private final Ranks all;
    private final double tieTerm;

    /**
     * Prepares tests against all values.
     *
     * @param all values of all groups
     */
    public RankTest(Ranks all) {
        this.all = all;
        tieTerm = all.sum((value, count) -> cubeLess((double) count));
    }

    private static double cubeLess(double ties) {
        return ties * ties * ties - ties;
    }

    /**
     * Prepares tests against all values.
     *
     * @param sorted values of all groups, ascending
     */
    public RankTest(double... sorted) {
        this(Ranks.ofSorted(sorted));
    }

    /**
     * The chance to be so far apart or farther if the group were drawn at random.
     *
     * @param group values of the group, which are among all
     * @return two-sided chance, 0 to 1; 1 where the group is all or nothing
     */
    public double chance(Ranks group) {
        double n = all.n();
        double m = group.n();
        double rest = n - m;
        if (m == 0 || rest == 0) {
            return 1;
        }
        double rankSum = group.sum((value, count) -> count * all.midRank(value));
        double excess = Math.abs(rankSum - m * (n + 1) / 2) - 0.5;
        double variance = m * rest / 12 * (n + 1 - tieTerm / (n * (n - 1)));
        return variance <= 0 || excess <= 0
                ? 1
                : Math.min(1, 2 * NORMAL.cumulativeProbability(-excess / Math.sqrt(variance)));
    }

    /** The same for single values in any order. */
    public double chance(double... group) {
        double[] sorted = group.clone();
        Arrays.sort(sorted);
        return chance(Ranks.ofSorted(sorted));
    }
}
