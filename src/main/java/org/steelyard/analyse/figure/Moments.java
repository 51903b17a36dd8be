package org.steelyard.analyse.figure;

import java.util.OptionalDouble;

/**
 * Mean and standard deviation, stable where the spread is small against the values. The first pass gives a mean by a
 * compensated sum; the second takes deviations d from it and corrects for its rounding: {@code mean += Σd / n} and
 * {@code sd² = (Σd² - (Σd)² / n) / (n - 1)} (the corrected two-pass algorithm of Chan, Golub and LeVeque, The American
 * Statistician 37, 1983).
 *
 * @param mean arithmetic mean
 * @param sd sample standard deviation with divisor n - 1; empty for one number
 */
record Moments(double mean, OptionalDouble sd) {

    /**
     * Mean and standard deviation of numbers.
     *
     * @param values finite numbers
     * @param n how many of them count, at least 1
     */
    static Moments of(double[] values, int n) {
        CompensatedSum sum = new CompensatedSum();
        for (int i = 0; i < n; i++) {
            sum.add(values[i]);
        }
        double about = sum.value() / n;
        CompensatedSum deviations = new CompensatedSum();
        CompensatedSum squares = new CompensatedSum();
        for (int i = 0; i < n; i++) {
            double deviation = values[i] - about;
            deviations.add(deviation);
            squares.add(deviation * deviation);
        }
        double rest = deviations.value();
        return new Moments(about + rest / n, sd(squares.value() - rest * rest / n, n));
    }

    private static OptionalDouble sd(double squares, int n) {
        return n == 1 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(Math.max(0, squares) / (n - 1)));
    }
}
