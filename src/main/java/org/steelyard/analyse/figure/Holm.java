package org.steelyard.analyse.figure;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Makes up for looking many times: chances adjusted so that calling everything below 5 % conspicuous is wrong anywhere
 * in at most one of twenty families (Holm, A Simple Sequentially Rejective Multiple Test Procedure, Scandinavian
 * Journal of Statistics 6, 1979; with weights in its section 4, from memory). Holds whether or not the tests depend on
 * each other.
 */
public final class Holm {

    private Holm() {}

    /**
     * Adjusted chances, every test weighing the same.
     *
     * @param chances chance of each test, 0 to 1
     * @return the adjusted one of each, in the same order
     */
    public static double[] adjusted(double... chances) {
        double[] weights = new double[chances.length];
        Arrays.fill(weights, 1);
        return adjusted(chances, weights);
    }

    /**
     * Adjusted chances, each test with its part of what may be wrong.
     *
     * @param chances chance of each test, 0 to 1
     * @param weights weight of each test, more than zero
     * @return the adjusted one of each, in the same order
     */
    public static double[] adjusted(double[] chances, double[] weights) {
        int[] order = IntStream.range(0, chances.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> chances[i] / weights[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] left = new double[order.length + 1]; // weights from each rank on
        for (int rank = order.length - 1; rank >= 0; rank--) {
            left[rank] = left[rank + 1] + weights[order[rank]];
        }
        double[] adjusted = new double[chances.length];
        double least = 0;
        for (int rank = 0; rank < order.length; rank++) {
            int test = order[rank];
            least = Math.max(least, Math.min(1, left[rank] * chances[test] / weights[test]));
            adjusted[test] = least;
        }
        return adjusted;
    }
}
