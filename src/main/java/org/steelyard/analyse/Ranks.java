package org.steelyard.analyse;

import java.util.Arrays;

/**
 * Values in ascending order, each once, and how often it occurs.
 *
 * <p>In cells, a value stands for all from it on up to the next cell.
 */
final class Ranks {

    private final double[] values;
    private final long[] upTo;
    private final boolean inCells;

    private Ranks(double[] values, long[] upTo, boolean inCells) {
        this.values = values;
        this.upTo = upTo;
        this.inCells = inCells;
    }

    /** Of single values in ascending order. */
    static Ranks ofSorted(double... sorted) {
        int distinct = 0;
        for (int i = 0; i < sorted.length; i++) {
            distinct += i == 0 || sorted[i] != sorted[i - 1] ? 1 : 0;
        }
        double[] values = new double[distinct];
        long[] upTo = new long[distinct];
        int size = 0;
        for (int i = 0; i < sorted.length; i++) {
            if (i == 0 || sorted[i] != sorted[i - 1]) {
                values[size++] = sorted[i];
            }
            upTo[size - 1] = i + 1L;
        }
        return new Ranks(values, upTo, false);
    }

    /** Of cells, each with its lower end and how many values it holds; ascending, none of them empty. */
    static Ranks ofCells(double[] lowerEnds, long... counts) {
        long[] upTo = counts.clone();
        Arrays.parallelPrefix(upTo, Long::sum);
        return new Ranks(lowerEnds.clone(), upTo, true);
    }

    boolean inCells() {
        return inCells;
    }

    int distinct() {
        return values.length;
    }

    double value(int i) {
        return values[i];
    }

    long count(int i) {
        return upTo[i] - (i == 0 ? 0 : upTo[i - 1]);
    }

    long n() {
        return upTo.length == 0 ? 0 : upTo[upTo.length - 1];
    }

    /** The mean of the ranks, from 1, that a value shares with its equals; it must be among these. */
    double midRank(double value) {
        int at = Arrays.binarySearch(values, value);
        if (at < 0) {
            throw new IllegalArgumentException("the value is not among those that were ranked: " + value);
        }
        return ((at == 0 ? 0 : upTo[at - 1]) + 1 + upTo[at]) / 2.0;
    }
}
