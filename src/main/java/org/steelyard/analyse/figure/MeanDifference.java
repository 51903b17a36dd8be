package org.steelyard.analyse.figure;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How far two means lie apart, with the interval and test of Welch (The Generalization of Student's Problem, Biometrika
 * 34, 1947), which asks for no common spread.
 *
 * @param difference first less second mean
 * @param low lower end of its 95 % interval
 * @param high upper end of it
 * @param effect the difference as a multiple of the pooled standard deviation
 * @param chance two-sided chance of such a difference if there were none
 */
public record MeanDifference(double difference, double low, double high, double effect, double chance) {

    /** n, mean and sum of squared deviations of some numbers. */
    public record Sample(long n, double mean, double squares) {

        double variance() {
            return squares / (n - 1);
        }

        /** This without a part of it. */
        public Sample without(Sample part) {
            long rest = n - part.n;
            double mean = this.mean + part.n / (double) rest * (this.mean - part.mean);
            double between = (double) part.n * rest / n * (part.mean - mean) * (part.mean - mean);
            return new Sample(rest, mean, Math.max(0, squares - part.squares - between));
        }
    }

    /**
     * Compares two samples.
     *
     * @param one first, of at least two numbers
     * @param other second, of at least two numbers
     */
    public static MeanDifference of(Sample one, Sample other) {
        double difference = one.mean() - other.mean();
        double pooled = Math.sqrt((one.squares() + other.squares()) / (one.n() + other.n() - 2));
        double a = one.variance() / one.n();
        double b = other.variance() / other.n();
        double error = Math.sqrt(a + b);
        if (!Double.isFinite(error)) {
            return new MeanDifference(difference, -Double.MAX_VALUE, Double.MAX_VALUE, 0, 1);
        }
        if (error == 0) {
            return new MeanDifference(difference, difference, difference, 0, difference == 0 ? 1 : 0);
        }
        double share = a / (a + b);
        double freedom = 1 / (share * share / (one.n() - 1) + (1 - share) * (1 - share) / (other.n() - 1));
        TDistribution student = new TDistribution(null, freedom);
        double reach = student.inverseCumulativeProbability(0.975) * error;
        return new MeanDifference(
                difference,
                difference - reach,
                difference + reach,
                pooled == 0 ? 0 : difference / pooled,
                2 * student.cumulativeProbability(-Math.abs(difference) / error));
    }
}
