package org.steelyard.trim;

import java.util.Arrays;

/**
 * A line of straight pieces that never rises, with a term in mass if wanted: {@code trim = a - sum over k of d_k
 * r_k(cg) + b (mass - reference)}, where {@code r_k} goes from 0 to 1 between knot k and the next, and every
 * {@code d_k} is not negative. So the constraint is a sign of coefficients, and the weighted least squares problem is
 * small and convex; it is solved by going through the coefficients in turn, each to its best value or to zero.
 */
final class BentLine {

    private static final int SWEEPS = 2000;
    private static final double STILL = 1e-11;

    private final double[] knots;
    private final boolean withMass;

    BentLine(double[] knots, boolean withMass) {
        this.knots = knots.clone();
        this.withMass = withMass;
    }

    double[] knots() {
        return knots.clone();
    }

    int coefficients() {
        return knots.length + (withMass ? 1 : 0);
    }

    /** What each coefficient is multiplied by at a place. */
    double[] row(double cg, double mass) {
        double[] row = new double[coefficients()];
        row[0] = 1;
        for (int k = 1; k < knots.length; k++) {
            double part = (cg - knots[k - 1]) / (knots[k] - knots[k - 1]);
            row[k] = -Math.max(0, Math.min(1, part));
        }
        if (withMass) {
            row[knots.length] = mass;
        }
        return row;
    }

    /** The value at a knot, at the reference mass. */
    double atKnot(double[] coefficients, int knot) {
        double value = coefficients[0];
        for (int k = 1; k <= knot; k++) {
            value -= coefficients[k];
        }
        return value;
    }

    static double value(double[] row, double[] coefficients) {
        double value = 0;
        for (int j = 0; j < row.length; j++) {
            value += row[j] * coefficients[j];
        }
        return value;
    }

    /** The coefficients with the least weighted sum of squares, searched from a start. */
    double[] fit(double[][] rows, double[] ys, double[] weights, double[] start) {
        int p = coefficients();
        double[][] squares = new double[p][p];
        double[] products = new double[p];
        for (int i = 0; i < rows.length; i++) {
            if (weights[i] > 0) {
                for (int j = 0; j < p; j++) {
                    double weighted = weights[i] * rows[i][j];
                    products[j] += weighted * ys[i];
                    for (int k = j; k < p; k++) {
                        squares[j][k] += weighted * rows[i][k];
                    }
                }
            }
        }
        for (int j = 0; j < p; j++) {
            for (int k = 0; k < j; k++) {
                squares[j][k] = squares[k][j];
            }
        }
        return descend(squares, products, start);
    }

    private double[] descend(double[][] squares, double[] products, double[] start) {
        double[] found = Arrays.copyOf(start, coefficients());
        for (int sweep = 0; sweep < SWEEPS; sweep++) {
            double moved = 0;
            for (int j = 0; j < found.length; j++) {
                if (squares[j][j] > 0) {
                    double gradient = products[j];
                    for (int k = 0; k < found.length; k++) {
                        gradient -= squares[j][k] * found[k];
                    }
                    double wanted = found[j] + gradient / squares[j][j];
                    double allowed = j >= 1 && j < knots.length ? Math.max(0, wanted) : wanted;
                    moved = Math.max(moved, Math.abs(allowed - found[j]));
                    found[j] = allowed;
                }
            }
            if (moved < STILL) {
                return found;
            }
        }
        return found;
    }
}
