package org.steelyard.analyse.figure;

import java.util.Arrays;
import java.util.Optional;

/** A column of numbers that grows: eight bytes a number and no more than half as much again to spare. */
public final class GrowingColumn {

    private double[] values = new double[16];
    private int size;

    public void add(double value) {
        if (size == values.length) {
            values = Arrays.copyOf(values, size + (size >> 1));
        }
        values[size++] = value;
    }

    int size() {
        return size;
    }

    /**
     * How they spread. The numbers are put in order for it, so that the result does not depend on the order in which
     * they came.
     *
     * @return empty if there are none
     */
    public Optional<Spread> spread() {
        if (size == 0) {
            return Optional.empty();
        }
        Arrays.sort(values, 0, size);
        return Optional.of(Spread.ofSorted(values, size));
    }
}
