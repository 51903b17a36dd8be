package org.steelyard.analyse.figure;

/**
 * Percentiles by the inclusive method: linear between the order statistics x(1) … x(n) at rank {@code 1 + p (n - 1) /
 * 100}, so that 0 is the least and 100 the greatest value. Definition 7 of Hyndman and Fan, "Sample Quantiles in
 * Statistical Packages", The American Statistician 50 (1996), as spreadsheets have it in their inclusive percentile.
 */
public final class Percentiles {

    private Percentiles() {}

    /**
     * One percentile. The rank is taken in whole numbers, so that it does not suffer from rounding.
     *
     * @param sorted numbers, ascending
     * @param n how many of them count, at least 1
     * @param percent from 0 to 100
     * @return a value from the least to the greatest of the numbers, in their unit
     * @throws IllegalArgumentException if there is no number or the percentage is outside its range
     */
    public static double inclusive(double[] sorted, int n, int percent) {
        if (n < 1 || percent < 0 || percent > 100) {
            throw new IllegalArgumentException("no " + percent + "th percentile of " + n + " numbers");
        }
        long hundredths = (long) percent * (n - 1);
        int low = (int) (hundredths / 100);
        long rest = hundredths % 100;
        if (rest == 0) {
            return sorted[low];
        }
        double high = sorted[low + 1];
        return Math.min(high, sorted[low] + rest / 100.0 * (high - sorted[low]));
    }
}
