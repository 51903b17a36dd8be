package org.steelyard.trim;

/**
 * The straight line with the least sum of squared residuals, {@code y = intercept + slope x}: not robust, one gross
 * error bends it. It stands beside a robust fit to show what the bad pairs would have done. Computed from deviations
 * from the means, which loses no digits to the size of the numbers (checked against the certified values of NIST's
 * reference data set Norris).
 *
 * @param slope change of y for one of x
 * @param intercept y at x = 0
 * @param slopeSd standard error of the slope
 * @param interceptSd standard error of the intercept
 * @param residualSd standard deviation of the residuals, with divisor n - 2
 * @param n number of pairs
 */
public record LeastSquaresLine(
        double slope, double intercept, double slopeSd, double interceptSd, double residualSd, int n) {

    /**
     * Fits the line.
     *
     * @param xs abscissas, not all the same
     * @param ys ordinates, as many; at least three
     * @return the line
     * @throws IllegalArgumentException if there are too few pairs, or all x are the same
     */
    public static LeastSquaresLine of(double[] xs, double[] ys) {
        int n = Pairs.requireSpread(xs, ys);
        double meanX = mean(xs);
        double meanY = mean(ys);
        double sxx = 0;
        double sxy = 0;
        for (int i = 0; i < n; i++) {
            sxx += (xs[i] - meanX) * (xs[i] - meanX);
            sxy += (xs[i] - meanX) * (ys[i] - meanY);
        }
        double slope = sxy / sxx;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double residual = ys[i] - meanY - slope * (xs[i] - meanX);
            squares += residual * residual;
        }
        double sd = Math.sqrt(squares / (n - 2));
        return new LeastSquaresLine(
                slope,
                meanY - slope * meanX,
                sd / Math.sqrt(sxx),
                sd * Math.sqrt(1.0 / n + meanX * meanX / sxx),
                sd,
                n);
    }

    /** The mean, corrected once for the rounding of its sum. */
    private static double mean(double[] values) {
        double sum = 0;
        for (double value : values) {
            sum += value;
        }
        double about = sum / values.length;
        double rest = 0;
        for (double value : values) {
            rest += value - about;
        }
        return about + rest / values.length;
    }
}
