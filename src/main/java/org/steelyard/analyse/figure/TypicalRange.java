package org.steelyard.analyse.figure;

import java.util.OptionalDouble;
import org.apache.commons.math3.distribution.BinomialDistribution;

/**
 * The typical range of some numbers: from their 5th to their 95th percentile, which holds the central nine tenths. Each
 * end has a confidence interval from order statistics: the number of values below the true percentile p is binomial
 * with n and p whatever the distribution, so that the interval from x(r) to x(s) covers it with {@code P(r ≤ B < s)}.
 * Taken are the greatest r with {@code P(B < r) ≤ 2.5 %} and the least s with {@code P(B ≥ s) ≤ 2.5 %}: at least 95 %
 * together, exact and without chance (David and Nagaraja, Order Statistics, section 7.1). With fewer than 72 numbers no
 * value is sure enough to lie outside, and the outer bound is empty.
 *
 * @param low 5th percentile by the inclusive method
 * @param lowFrom lower bound of its interval; empty where there are too few numbers
 * @param lowTo upper bound of its interval; empty where there are too few numbers
 * @param high 95th percentile by the inclusive method
 * @param highFrom lower bound of its interval; empty where there are too few numbers
 * @param highTo upper bound of its interval; empty where there are too few numbers
 */
public record TypicalRange(
        double low,
        OptionalDouble lowFrom,
        OptionalDouble lowTo,
        double high,
        OptionalDouble highFrom,
        OptionalDouble highTo) {

    private static final double EACH_SIDE = 0.025;

    public static TypicalRange ofSorted(double[] sorted, int n) {
        int[] low = ranks(n, 0.05);
        int[] high = ranks(n, 0.95);
        return new TypicalRange(
                Percentiles.inclusive(sorted, n, 5),
                at(sorted, n, low[0]),
                at(sorted, n, low[1]),
                Percentiles.inclusive(sorted, n, 95),
                at(sorted, n, high[0]),
                at(sorted, n, high[1]));
    }

    /** Ranks r and s from 1 to n of the interval; 0 or n + 1 where there is none. */
    public static int[] ranks(int n, double p) {
        BinomialDistribution below = new BinomialDistribution(null, n, p);
        int r = below.inverseCumulativeProbability(EACH_SIDE);
        while (r > 0 && below.cumulativeProbability(r - 1) > EACH_SIDE) {
            r--;
        }
        int s = below.inverseCumulativeProbability(1 - EACH_SIDE) + 1;
        while (s > 1 && 1 - below.cumulativeProbability(s - 2) <= EACH_SIDE) {
            s--;
        }
        while (s <= n && 1 - below.cumulativeProbability(s - 1) > EACH_SIDE) {
            s++;
        }
        return new int[] {r, s};
    }

    private static OptionalDouble at(double[] sorted, int n, int rank) {
        return rank < 1 || rank > n ? OptionalDouble.empty() : OptionalDouble.of(sorted[rank - 1]);
    }
}
