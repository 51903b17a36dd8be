package org.steelyard.analyse.column;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.steelyard.analyse.figure.Ascending;

/** A column of numbers, some of them not known, that grows in chunks: eight bytes a number and nothing to copy. */
public final class NumberColumn {

    private static final int CHUNK = 1 << 13;

    /** Stands for a number that is not known; never leaves this package as a figure. */
    private static final double UNKNOWN = Double.NaN;

    private final List<double[]> chunks = new ArrayList<>();
    private int size;

    void add(OptionalDouble value) {
        add(value.isPresent() ? value.getAsDouble() : UNKNOWN);
    }

    void add(double value) {
        if (size == chunks.size() * CHUNK) {
            chunks.add(new double[CHUNK]);
        }
        chunks.get(size / CHUNK)[size % CHUNK] = value;
        size++;
    }

    boolean knows(int index) {
        return !Double.isNaN(raw(index));
    }

    double get(int index) {
        return raw(index);
    }

    public OptionalDouble at(int index) {
        return knows(index) ? OptionalDouble.of(raw(index)) : OptionalDouble.empty();
    }

    /** All numbers that are known, in order. */
    Ascending ascending() {
        double[] all = new double[size];
        for (int i = 0; i < chunks.size(); i++) {
            System.arraycopy(chunks.get(i), 0, all, i * CHUNK, Math.min(CHUNK, size - i * CHUNK));
        }
        return new Ascending(all);
    }

    private double raw(int index) {
        return chunks.get(index / CHUNK)[index % CHUNK];
    }
}
