package org.steelyard.analyse.figure;

import java.util.Arrays;
import java.util.OptionalDouble;

/**
 * How a set of numbers spreads. Percentiles are by the inclusive method: linear between the order statistics at rank
 * {@code 1 + p (n - 1)} (Hyndman and Fan's definition 7, as spreadsheets have it). Mean and standard deviation are by a
 * corrected two-pass sum.
 *
 * @param n how many numbers, at least 1
 * @param mean arithmetic mean
 * @param sd sample standard deviation with divisor n - 1; empty for one number
 * @param min least
 * @param p5 5th percentile
 * @param p25 25th percentile
 * @param median 50th percentile
 * @param p75 75th percentile
 * @param p95 95th percentile
 * @param max greatest
 */
public record Spread(
        long n,
        double mean,
        OptionalDouble sd,
        double min,
        double p5,
        double p25,
        double median,
        double p75,
        double p95,
        double max) {

    /**
     * With fewer flights the 5th and 95th percentile lie between the two outermost values: rank 1 + 0.05 (n - 1) &lt;
     * 2.
     */
    public static final int FEW = 21;

    /** Whether there are so few numbers that their percentiles say little ({@link #FEW}). */
    public boolean few() {
        return n < FEW;
    }

    /**
     * The spread of some numbers.
     *
     * @param values finite numbers in any order, at least one
     * @return their spread
     * @throws IllegalArgumentException if there is none
     */
    public static Spread of(double... values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return ofSorted(sorted, sorted.length);
    }

    static Spread ofSorted(double[] sorted, int n) {
        if (n < 1) {
            throw new IllegalArgumentException("nothing has no spread");
        }
        Moments moments = Moments.of(sorted, n);
        return new Spread(
                n,
                moments.mean(),
                moments.sd(),
                sorted[0],
                Percentiles.inclusive(sorted, n, 5),
                Percentiles.inclusive(sorted, n, 25),
                Percentiles.inclusive(sorted, n, 50),
                Percentiles.inclusive(sorted, n, 75),
                Percentiles.inclusive(sorted, n, 95),
                sorted[n - 1]);
    }
}
