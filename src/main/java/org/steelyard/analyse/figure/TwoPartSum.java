package org.steelyard.analyse.figure;

import java.io.Serializable;
import java.math.BigDecimal;

/**
 * A sum carried in two parts, some 106 bits together, so that the order in which numbers are added and sums are put
 * together shows in no digit of a double (Dekker, A Floating-Point Technique for Extending the Available Precision,
 * Numerische Mathematik 18, 1971; Knuth's exact sum of two numbers).
 */
final class TwoPartSum implements Serializable {

    private static final long serialVersionUID = 1;

    private double high;
    private double low;

    void add(double value) {
        double sum = high + value;
        double moved = sum - high;
        double lost = (high - (sum - moved)) + (value - moved);
        double rest = low + lost;
        high = sum + rest;
        low = rest - (high - sum);
    }

    /** Adds the square of a number, without rounding it first. */
    void addSquare(double value) {
        double square = value * value;
        add(square);
        add(Math.fma(value, value, -square));
    }

    void add(TwoPartSum other) {
        double low2 = other.low;
        add(other.high);
        add(low2);
    }

    BigDecimal value() {
        return new BigDecimal(high).add(new BigDecimal(low));
    }
}
