package org.steelyard.analyse.figure;

import java.io.Serializable;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.OptionalDouble;

/**
 * Number, mean, standard deviation, least and greatest of figures that come in parts. The sums are so long that the
 * parts into which the figures were divided do not show: mean and standard deviation agree to 1e-12 with those of a
 * corrected two-pass sum.
 */
public final class MergeableMoments implements Serializable {

    private static final long serialVersionUID = 1;
    private static final MathContext DIGITS = new MathContext(60);

    private final TwoPartSum sum = new TwoPartSum();
    private final TwoPartSum squares = new TwoPartSum();
    private long n;
    private double min = Double.POSITIVE_INFINITY;
    private double max = Double.NEGATIVE_INFINITY;

    public void add(double value) {
        n++;
        sum.add(value);
        squares.addSquare(value);
        min = Math.min(min, value);
        max = Math.max(max, value);
    }

    public void merge(MergeableMoments other) {
        n += other.n;
        sum.add(other.sum);
        squares.add(other.squares);
        min = Math.min(min, other.min);
        max = Math.max(max, other.max);
    }

    public long n() {
        return n;
    }

    public double min() {
        return min;
    }

    public double max() {
        return max;
    }

    public double mean() {
        return sum.value().divide(BigDecimal.valueOf(n), DIGITS).doubleValue();
    }

    /** Sum of squared deviations from the mean. */
    public double deviations() {
        if (min == max) {
            return 0;
        }
        BigDecimal all = sum.value();
        BigDecimal rest = squares.value().subtract(all.multiply(all).divide(BigDecimal.valueOf(n), DIGITS));
        return Math.max(0, rest.doubleValue());
    }

    public OptionalDouble sd() {
        return n == 1 ? OptionalDouble.empty() : OptionalDouble.of(Math.sqrt(deviations() / (n - 1)));
    }
}
