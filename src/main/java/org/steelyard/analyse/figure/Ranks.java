package org.steelyard.analyse.figure;

import java.util.Arrays;

/** Values in ascending order and how often each occurs. */
public interface Ranks {

    /** Of a value and how often it occurs. */
    @FunctionalInterface
    interface Summand {

        double of(double value, long count);
    }

    /** Of single values in ascending order, which are not copied. */
    static Ranks ofSorted(double... sorted) {
        return new Single(sorted);
    }

    /** Of cells, each with its lower end and how many values it holds; ascending, none of them empty. */
    static Ranks ofCells(double[] lowerEnds, long... counts) {
        return new InCells(lowerEnds, counts);
    }

    /** Whether a value stands for all from it on up to the next. */
    boolean inCells();

    /** How many values there are. */
    long n();

    /** The sum over the values, each taken once, ascending. */
    double sum(Summand summand);

    /** The mean of the ranks, from 1, that a value shares with its equals; it must be among these. */
    double midRank(double value);

    /** Single values, equal ones side by side: what the ranks hold, and no more, as it may be a season. */
    final class Single implements Ranks {

        private final double[] sorted;

        private Single(double... sorted) {
            this.sorted = sorted;
        }

        @Override
        public boolean inCells() {
            return false;
        }

        @Override
        public long n() {
            return sorted.length;
        }

        @Override
        public double sum(Summand summand) {
            double sum = 0;
            int from = 0;
            for (int to = 1; to <= sorted.length; to++) {
                if (to == sorted.length || sorted[to] != sorted[from]) {
                    sum += summand.of(sorted[from], (long) to - from);
                    from = to;
                }
            }
            return sum;
        }

        @Override
        public double midRank(double value) {
            int below = below(value, false);
            int upTo = below(value, true);
            if (upTo == below) {
                throw unknown(value);
            }
            return ((long) below + 1 + upTo) / 2.0;
        }

        /** How many values are less, or with its equals not greater. */
        private int below(double value, boolean withEquals) {
            int low = 0;
            int high = sorted.length;
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (sorted[middle] < value || (withEquals && sorted[middle] == value)) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    /** Values of which only is known how many lie in each cell. */
    final class InCells implements Ranks {

        private final double[] lowerEnds;
        private final long[] upTo;

        private InCells(double[] lowerEnds, long... counts) {
            this.lowerEnds = lowerEnds.clone();
            upTo = counts.clone();
            Arrays.parallelPrefix(upTo, Long::sum);
        }

        @Override
        public boolean inCells() {
            return true;
        }

        @Override
        public long n() {
            return upTo.length == 0 ? 0 : upTo[upTo.length - 1];
        }

        @Override
        public double sum(Summand summand) {
            double sum = 0;
            for (int i = 0; i < upTo.length; i++) {
                sum += summand.of(lowerEnds[i], upTo[i] - below(i));
            }
            return sum;
        }

        @Override
        public double midRank(double value) {
            int at = Arrays.binarySearch(lowerEnds, value);
            if (at < 0) {
                throw unknown(value);
            }
            return (below(at) + 1 + upTo[at]) / 2.0;
        }

        private long below(int i) {
            return i == 0 ? 0 : upTo[i - 1];
        }
    }

    private static IllegalArgumentException unknown(double value) {
        return new IllegalArgumentException("the value is not among those that were ranked: " + value);
    }
}
