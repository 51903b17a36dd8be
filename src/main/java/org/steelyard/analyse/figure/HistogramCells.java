package org.steelyard.analyse.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;

/**
 * Counts of cells side by side.
 *
 * @param first middle of the first cell
 * @param width width of each
 * @param counts how many values each holds, its lower end included
 */
public record HistogramCells(double first, double width, List<Long> counts) {

    public HistogramCells {
        counts = List.copyOf(counts);
    }

    /** The number of the cell in which a value lies; cell 0 has its middle at 0. */
    public static long cellOf(double value, double width) {
        return (long) Math.floor(value / width + 0.5);
    }

    /** Cells from counts by number; cell 0 has its middle at 0. */
    public static HistogramCells of(SortedMap<Long, Long> counts, double width) {
        List<Long> all = new ArrayList<>();
        if (!counts.isEmpty()) {
            for (long cell = counts.firstKey(); cell <= counts.lastKey(); cell++) {
                all.add(counts.getOrDefault(cell, 0L));
            }
        }
        return new HistogramCells(counts.isEmpty() ? 0 : counts.firstKey() * width, width, all);
    }
}
