package org.steelyard.trim;

import java.util.Arrays;

/**
 * The line whose slope is the median of the slopes of all pairs of points, and whose intercept is the median of what is
 * left: up to 29 % of wrong points do not carry it away (H. Theil, 1950). The interval of the slope comes from order
 * statistics of the same slopes, with the normal approximation to Kendall's statistic (P. K. Sen, Journal of the
 * American Statistical Association 63, 1968): with N slopes of n points, {@code C = 1.96 sqrt(n (n - 1) (2 n + 5) /
 * 18)}, it runs from the {@code (N - C) / 2}-th to the {@code (N + C) / 2 + 1}-th smallest.
 *
 * @param slope change of y for one of x
 * @param intercept y at x = 0
 * @param slopeLow lower end of the 95 % interval of the slope
 * @param slopeHigh its upper end
 * @param n number of points
 */
public record TheilSenLine(double slope, double intercept, double slopeLow, double slopeHigh, int n) {

    private static final double NORMAL_975 = 1.959963984540054;

    /**
     * Fits the line.
     *
     * @param xs abscissas, not all the same
     * @param ys ordinates, as many; at least three, and not so many that the slopes of all pairs of them do not fit
     * @return the line
     * @throws IllegalArgumentException if there are too few points, or all x are the same
     */
    public static TheilSenLine of(double[] xs, double[] ys) {
        int n = Pairs.requireSpread(xs, ys);
        double[] slopes = slopes(xs, ys);
        double slope = Pairs.median(slopes);
        double[] rests = new double[n];
        for (int i = 0; i < n; i++) {
            rests[i] = ys[i] - slope * xs[i];
        }
        double reach = NORMAL_975 * Math.sqrt(n * (n - 1.0) * (2.0 * n + 5) / 18);
        return new TheilSenLine(
                slope,
                Pairs.median(rests),
                slopes[rank((slopes.length - reach) / 2, slopes.length)],
                slopes[rank((slopes.length + reach) / 2 + 1, slopes.length)],
                n);
    }

    /**
     * The line at a place.
     *
     * @param x abscissa
     * @return y there
     */
    public double at(double x) {
        return intercept + slope * x;
    }

    private static int rank(double order, int size) {
        return (int) Math.max(0, Math.min(size - 1, Math.rint(order) - 1));
    }

    private static double[] slopes(double[] xs, double[] ys) {
        double[] slopes = new double[xs.length * (xs.length - 1) / 2];
        int count = 0;
        for (int i = 1; i < xs.length; i++) {
            for (int j = 0; j < i; j++) {
                if (xs[i] != xs[j]) {
                    slopes[count++] = (ys[i] - ys[j]) / (xs[i] - xs[j]);
                }
            }
        }
        return Arrays.copyOf(slopes, count);
    }
}
