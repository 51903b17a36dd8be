package org.steelyard.check;

/**
 * When a figure counts as on a limit. On a limit is inside; sums and products of doubles leave errors far below one
 * part in a thousand million, so a figure within that of its limit is on it.
 */
final class Tolerance {

    /** Relative to the limit for masses and loads, to the length of the chord for positions. */
    static final double RELATIVE = 1e-9;

    private Tolerance() {}

    /**
     * A value that lies on an end of a range, but for rounding, is moved onto it.
     *
     * @return the value, or the end that it is on
     */
    static double onto(double value, double from, double to) {
        if (value < from && !isOutside(value - from, from)) {
            return from;
        }
        return value > to && !isOutside(to - value, to) ? to : value;
    }

    /** Whether a margin, negative outside, is a breach of a limit of a size. */
    static boolean isOutside(double margin, double size) {
        return margin < -RELATIVE * Math.abs(size);
    }
}
