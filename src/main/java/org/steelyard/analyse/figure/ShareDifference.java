package org.steelyard.analyse.figure;

import org.apache.commons.math3.distribution.HypergeometricDistribution;
import org.apache.commons.math3.distribution.NormalDistribution;

/**
 * How far two shares lie apart: interval by Newcombe's hybrid of Wilson's score intervals (Interval Estimation for the
 * Difference between Independent Proportions, Statistics in Medicine 17, 1998, method 10), chance by Fisher's exact
 * test (two-sided: all tables no likelier than the one seen).
 *
 * @param difference first less second share
 * @param low lower end of its 95 % interval
 * @param high upper end of it
 * @param effect Cohen's h: difference of the arcsines of the roots, doubled
 * @param chance two-sided chance
 */
public record ShareDifference(double difference, double low, double high, double effect, double chance) {

    private static final double Z = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(0.975);
    private static final double SAME = 1 + 1e-9;
    private static final int MOST_FOR_EXACT = 20_000;

    /** Compares {@code some} of {@code all} with {@code otherSome} of {@code otherAll}; neither all may be zero. */
    public static ShareDifference of(long some, long all, long otherSome, long otherAll) {
        double one = (double) some / all;
        double other = (double) otherSome / otherAll;
        double[] wilsonOne = wilson(one, all);
        double[] wilsonOther = wilson(other, otherAll);
        double difference = one - other;
        return new ShareDifference(
                difference,
                difference - Math.hypot(one - wilsonOne[0], wilsonOther[1] - other),
                difference + Math.hypot(wilsonOne[1] - one, other - wilsonOther[0]),
                2 * (Math.asin(Math.sqrt(one)) - Math.asin(Math.sqrt(other))),
                chance(some, all, otherSome, otherAll));
    }

    private static double[] wilson(double share, long n) {
        double middle = share + Z * Z / (2 * n);
        double reach = Z * Math.sqrt(share * (1 - share) / n + Z * Z / (4.0 * n * n));
        double scale = 1 + Z * Z / n;
        return new double[] {Math.max(0, (middle - reach) / scale), Math.min(1, (middle + reach) / scale)};
    }

    private static double chance(long some, long all, long otherSome, long otherAll) {
        long together = some + otherSome;
        if (together > MOST_FOR_EXACT || all + otherAll > Integer.MAX_VALUE) {
            return normal(some, all, otherSome, otherAll);
        }
        HypergeometricDistribution tables =
                new HypergeometricDistribution(null, (int) (all + otherAll), (int) together, (int) all);
        double seen = tables.logProbability((int) some) + Math.log(SAME);
        double sum = 0;
        for (int x = tables.getSupportLowerBound(); x <= tables.getSupportUpperBound(); x++) {
            double log = tables.logProbability(x);
            sum += log <= seen ? Math.exp(log) : 0;
        }
        return Math.min(1, sum);
    }

    /** Beyond the reach of the exact test there are so many of both that the normal approximation is as good. */
    private static double normal(long some, long all, long otherSome, long otherAll) {
        double pooled = (some + otherSome) / (double) (all + otherAll);
        double error = Math.sqrt(pooled * (1 - pooled) * (1.0 / all + 1.0 / otherAll));
        double z = Math.abs((double) some / all - (double) otherSome / otherAll) / error;
        return error == 0 ? 1 : 2 * new NormalDistribution(null, 0, 1).cumulativeProbability(-z);
    }
}
