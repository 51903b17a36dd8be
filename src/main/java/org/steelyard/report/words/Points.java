package org.steelyard.report.words;

import java.util.Arrays;

/**
 * Points of a picture in the order in which they came. Where there is a limit, each time it is reached every second
 * point is dropped and from then on only every second one taken, so that those kept are every n-th of all.
 */
public final class Points {

    private final int most;
    private double[] xs = new double[16];
    private double[] ys = new double[16];
    private int size;
    private long seen;
    private long every = 1;

    private Points(int most) {
        this.most = most;
    }

    static Points all() {
        return new Points(Integer.MAX_VALUE);
    }

    static Points atMost(int most) {
        return new Points(most);
    }

    void add(double x, double y) {
        if (seen % every == 0) {
            if (size == most) {
                halve();
            }
            if (seen % every == 0) {
                push(x, y);
            }
        }
        seen++;
    }

    private void halve() {
        for (int i = 0; 2 * i < size; i++) {
            xs[i] = xs[2 * i];
            ys[i] = ys[2 * i];
        }
        size = (size + 1) / 2;
        every *= 2;
    }

    private void push(double x, double y) {
        if (size == xs.length) {
            xs = Arrays.copyOf(xs, size * 2);
            ys = Arrays.copyOf(ys, size * 2);
        }
        xs[size] = x;
        ys[size++] = y;
    }

    public int size() {
        return size;
    }

    /** How many came, kept or not. */
    public long seen() {
        return seen;
    }

    /** One of how many is kept. */
    public long every() {
        return every;
    }

    public double x(int i) {
        return xs[i];
    }

    public double y(int i) {
        return ys[i];
    }
}
