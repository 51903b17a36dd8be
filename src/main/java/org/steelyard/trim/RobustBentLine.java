package org.steelyard.trim;

/**
 * Fits a {@link BentLine} by an M-estimator with Tukey's bisquare (tuning constant 4.685), iteratively reweighted from
 * a robust start: a pair that lies more than 4.685 robust standard deviations off has no weight at all (P. J. Huber and
 * E. M. Ronchetti, Robust Statistics, 2009; the constant gives 95 % efficiency on normal data).
 */
final class RobustBentLine {

    /** Beyond so many robust standard deviations a pair has no weight. */
    static final double CUT = 4.685;

    private static final double MAD_TO_SD = 1.4826;
    private static final int ROUNDS = 60;
    private static final int SCALE_ROUNDS = 20;
    private static final double STILL = 1e-9;

    private final BentLine line;
    private final double[][] rows;
    private final double[] ys;
    private final double leastSd;

    RobustBentLine(BentLine line, double[] cgs, double[] masses, double[] ys, double leastSd) {
        this.line = line;
        this.ys = ys.clone();
        this.leastSd = leastSd;
        rows = new double[ys.length][];
        for (int i = 0; i < ys.length; i++) {
            rows[i] = line.row(cgs[i], masses[i]);
        }
    }

    /** Coefficients with the robust standard deviation of what they leave. */
    static final class Found {

        private final BentLine line;
        private final double[] coefficients;
        private final double sd;

        private Found(BentLine line, double[] coefficients, double sd) {
            this.line = line;
            this.coefficients = coefficients;
            this.sd = sd;
        }

        BentLine line() {
            return line;
        }

        double[] coefficients() {
            return coefficients.clone();
        }

        double sd() {
            return sd;
        }

        double valueAt(double cg, double mass) {
            return BentLine.value(line.row(cg, mass), coefficients);
        }
    }

    /** From residuals of some robust fit. */
    Found from(double[] residuals, double[] start) {
        double sd = sd(residuals);
        double[] left = residuals.clone();
        double[] found = start.clone();
        for (int round = 0; round < ROUNDS; round++) {
            double[] next = line.fit(rows, ys, weights(left, sd), found);
            double moved = 0;
            for (int j = 0; j < next.length; j++) {
                moved = Math.max(moved, Math.abs(next[j] - found[j]));
            }
            found = next;
            left = residuals(found);
            if (round < SCALE_ROUNDS) {
                sd = sd(left);
            }
            if (moved < STILL) {
                break;
            }
        }
        return new Found(line, found, sd);
    }

    double[] residuals(double[] coefficients) {
        double[] left = new double[ys.length];
        for (int i = 0; i < ys.length; i++) {
            left[i] = ys[i] - BentLine.value(rows[i], coefficients);
        }
        return left;
    }

    private static double[] weights(double[] residuals, double sd) {
        double[] weights = new double[residuals.length];
        for (int i = 0; i < weights.length; i++) {
            double u = residuals[i] / (CUT * sd);
            weights[i] = Math.abs(u) < 1 ? (1 - u * u) * (1 - u * u) : 0;
        }
        return weights;
    }

    private double sd(double[] residuals) {
        double[] sizes = new double[residuals.length];
        for (int i = 0; i < sizes.length; i++) {
            sizes[i] = Math.abs(residuals[i]);
        }
        return Math.max(leastSd, MAD_TO_SD * Pairs.median(sizes));
    }

    /** Twice the sum of the bisquare's loss: what a sum of squares over its variance is for normal residuals. */
    static double deviance(double[] residuals, double sd) {
        double sum = 0;
        for (double residual : residuals) {
            double u = residual / (CUT * sd);
            double rest = Math.abs(u) < 1 ? 1 - u * u : 0;
            sum += CUT * CUT / 3 * (1 - rest * rest * rest);
        }
        return sum;
    }
}
