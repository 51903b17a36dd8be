package org.steelyard.trim;

import java.util.Arrays;

/** Small work on pairs of numbers. */
final class Pairs {

    private static final int FEWEST = 3;

    private Pairs() {}

    /** How many pairs there are. */
    static int requireSpread(double[] xs, double[] ys) {
        if (xs.length != ys.length || xs.length < FEWEST) {
            throw new IllegalArgumentException("a line needs at least three pairs, not " + xs.length);
        }
        if (Arrays.stream(xs).allMatch(x -> x == xs[0])) {
            throw new IllegalArgumentException("a line needs pairs at different places; all are at " + xs[0]);
        }
        return xs.length;
    }

    /** The median; the numbers are sorted in place. */
    static double median(double[] numbers) {
        Arrays.sort(numbers);
        int half = numbers.length / 2;
        return numbers.length % 2 == 1 ? numbers[half] : (numbers[half - 1] + numbers[half]) / 2;
    }

    /** A percentile by the inclusive method (definition 7 of Hyndman and Fan, 1996) of sorted numbers. */
    static double percentile(double[] sorted, double share) {
        double rank = share * (sorted.length - 1);
        int low = (int) Math.floor(rank);
        int high = Math.min(low + 1, sorted.length - 1);
        return sorted[low] + (rank - low) * (sorted[high] - sorted[low]);
    }
}
