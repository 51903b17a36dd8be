package org.steelyard.analyse.figure;

/** A running sum that carries what rounding loses (Neumaier's variant of Kahan's summation, 1974). */
final class CompensatedSum {

    private double sum;
    private double lost;

    void add(double value) {
        double next = sum + value;
        lost += Math.abs(sum) >= Math.abs(value) ? (sum - next) + value : (value - next) + sum;
        sum = next;
    }

    double value() {
        return sum + lost;
    }
}
