package org.steelyard.analyse;

import it.unimi.dsi.fastutil.doubles.DoubleArrays;

/** The numbers of a column that are known, from the least to the greatest, each with its position in the column. */
final class Ascending {

    private final int columnSize;
    private final int[] positions;
    private final double[] values;

    /**
     * Puts numbers in order.
     *
     * @param all the numbers of a column, not a number where one is not known
     */
    Ascending(double... all) {
        columnSize = all.length;
        int known = 0;
        for (double value : all) {
            known += Double.isNaN(value) ? 0 : 1;
        }
        positions = new int[known];
        values = new double[known];
        int next = 0;
        for (int i = 0; i < all.length; i++) {
            if (!Double.isNaN(all[i])) {
                positions[next++] = i;
            }
        }
        DoubleArrays.radixSortIndirect(positions, all, true);
        for (int i = 0; i < known; i++) {
            values[i] = all[positions[i]];
        }
    }

    /** How many numbers the column had, those not known among them. */
    int columnSize() {
        return columnSize;
    }

    int size() {
        return values.length;
    }

    int position(int i) {
        return positions[i];
    }

    double value(int i) {
        return values[i];
    }
}
