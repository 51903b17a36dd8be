package org.steelyard.analyse.figure;

import java.io.Serializable;

/**
 * Means of a row of numbers x and of a number y, variances and covariances with y, updated flight by flight without
 * holding any (Welford, Note on a Method for Calculating Corrected Sums of Squares and Products, Technometrics 4,
 * 1962).
 */
public final class CoMoments implements Serializable {

    private static final long serialVersionUID = 1;

    private final double[] means;
    private final double[] squares;
    private final double[] products;
    private double meanY;
    private double squaresY;
    private long n;

    public CoMoments(int width) {
        means = new double[width];
        squares = new double[width];
        products = new double[width];
    }

    public void add(double[] x, double y) {
        n++;
        double part = 1.0 / n;
        double fromMeanY = y - meanY;
        meanY += fromMeanY * part;
        squaresY += fromMeanY * (y - meanY);
        for (int j = 0; j < means.length; j++) {
            double from = x[j] - means[j];
            means[j] += from * part;
            squares[j] += from * (x[j] - means[j]);
            products[j] += from * (y - meanY);
        }
    }

    /** Adds the figures of another (Chan, Golub and LeVeque, The American Statistician 37, 1983). */
    public void merge(CoMoments other) {
        if (other.n == 0) {
            return;
        }
        double part = (double) other.n / (n + other.n);
        double weight = n * part;
        double fromMeanY = other.meanY - meanY;
        for (int j = 0; j < means.length; j++) {
            double from = other.means[j] - means[j];
            squares[j] += other.squares[j] + from * from * weight;
            products[j] += other.products[j] + from * fromMeanY * weight;
            means[j] += from * part;
        }
        squaresY += other.squaresY + fromMeanY * fromMeanY * weight;
        meanY += fromMeanY * part;
        n += other.n;
    }

    public long n() {
        return n;
    }

    public double meanY() {
        return meanY;
    }

    public double varianceY() {
        return n < 2 ? 0 : squaresY / (n - 1);
    }

    public double mean(int j) {
        return means[j];
    }

    public double variance(int j) {
        return n < 2 ? 0 : squares[j] / (n - 1);
    }

    public double covariance(int j) {
        return n < 2 ? 0 : products[j] / (n - 1);
    }
}
