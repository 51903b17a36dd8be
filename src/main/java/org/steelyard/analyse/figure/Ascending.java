package org.steelyard.analyse.figure;

import it.unimi.dsi.fastutil.doubles.DoubleArrays;

/** Where in a column the numbers stand that are known, from the least to the greatest. */
public final class Ascending {

    private final int columnSize;
    private final int[] positions;

    /**
     * Puts numbers in order.
     *
     * @param all the numbers of a column, not a number where one is not known
     */
    public Ascending(double... all) {
        columnSize = all.length;
        int known = 0;
        for (double value : all) {
            known += Double.isNaN(value) ? 0 : 1;
        }
        positions = new int[known];
        int next = 0;
        for (int i = 0; i < all.length; i++) {
            if (!Double.isNaN(all[i])) {
                positions[next++] = i;
            }
        }
        DoubleArrays.radixSortIndirect(positions, all, true);
    }

    /** How many numbers the column had, those not known among them. */
    public int columnSize() {
        return columnSize;
    }

    public int size() {
        return positions.length;
    }

    public int position(int i) {
        return positions[i];
    }
}
