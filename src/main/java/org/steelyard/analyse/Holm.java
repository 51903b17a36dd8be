package org.steelyard.analyse;

import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * Makes up for looking many times: chances adjusted so that calling everything below 5 % conspicuous is wrong anywhere
 * in at most one of twenty families (Holm, A Simple Sequentially Rejective Multiple Test Procedure, Scandinavian
 * Journal of Statistics 6, 1979). Holds whether or not the tests depend on each other.
 */
final class Holm {

    private Holm() {}

    /**
     * Adjusted chances.
     *
     * @param chances chance of each test, 0 to 1
     * @return the adjusted one of each, in the same order
     */
    static double[] adjusted(double... chances) {
        int[] order = IntStream.range(0, chances.length)
                .boxed()
                .sorted(Comparator.comparingDouble(i -> chances[i]))
                .mapToInt(Integer::intValue)
                .toArray();
        double[] adjusted = new double[chances.length];
        double least = 0;
        for (int rank = 0; rank < order.length; rank++) {
            least = Math.max(least, Math.min(1, (order.length - rank) * chances[order[rank]]));
            adjusted[order[rank]] = least;
        }
        return adjusted;
    }
}
