package org.steelyard.demo;

import java.util.List;

/**
 * Numbers that look random and are the same everywhere: the SplitMix64 generator (Steele, Lea and Flood, "Fast
 * splittable pseudorandom number generators", OOPSLA 2014). Our own few lines, because the files of the demo must never
 * change with the Java version.
 */
final class Draws {

    private static final long STEP = 0x9E3779B97F4A7C15L;

    private long state;

    /** A sequence of its own for each list of seeds. */
    Draws(long... seeds) {
        for (long seed : seeds) {
            state = mixed(state + STEP) ^ mixed(seed + STEP);
        }
    }

    private static long mixed(long value) {
        long mixed = (value ^ (value >>> 30)) * 0xBF58476D1CE4E5B9L;
        mixed = (mixed ^ (mixed >>> 27)) * 0x94D049BB133111EBL;
        return mixed ^ (mixed >>> 31);
    }

    long next() {
        state += STEP;
        return mixed(state);
    }

    /** From 0 to below 1. */
    double unit() {
        return (next() >>> 11) * 0x1.0p-53;
    }

    /** A whole number, both ends included. */
    int between(int low, int high) {
        return low + (int) (unit() * (high - low + 1));
    }

    /** More often near the middle than near the ends. */
    double bell(double low, double high) {
        return low + (high - low) * (unit() + unit() + unit()) / 3;
    }

    boolean chance(double percent) {
        return unit() * 100 < percent;
    }

    <T> T pick(List<T> choices) {
        return choices.get(between(0, choices.size() - 1));
    }
}
