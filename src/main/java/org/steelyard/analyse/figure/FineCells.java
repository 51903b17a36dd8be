package org.steelyard.analyse.figure;

import java.io.Serializable;
import java.util.Arrays;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Figures counted in narrow cells: 0.01 % MAC or 0.001 units of trim, finer than anything printed. Counts add up
 * exactly, and of what is compared by rank only what lies in one cell counts as equal. What lies beyond 10,000 cells to
 * either side is counted in the outermost.
 */
public final class FineCells implements Serializable {

    private static final long serialVersionUID = 1;
    private static final int FARTHEST = 10_000;
    private static final int CG_CELLS = 100;
    private static final int TRIM_CELLS = 1000;

    private final int cellsPerUnit;
    private long[] counts = {};
    private int first;

    private FineCells(int cellsPerUnit) {
        this.cellsPerUnit = cellsPerUnit;
    }

    public static FineCells of(Measure measure, double... values) {
        FineCells cells = new FineCells(measure == Measure.TAKEOFF_TRIM ? TRIM_CELLS : CG_CELLS);
        for (double value : values) {
            cells.add(value);
        }
        return cells;
    }

    public void add(double value) {
        double cell = Math.floor(value * cellsPerUnit);
        add((int) Math.max(-FARTHEST, Math.min(FARTHEST, cell)), 1);
    }

    public void merge(FineCells other) {
        for (int i = 0; i < other.counts.length; i++) {
            if (other.counts[i] > 0) {
                add(other.first + i, other.counts[i]);
            }
        }
    }

    private void add(int cell, long count) {
        if (counts.length == 0) {
            first = cell;
            counts = new long[1];
        } else if (cell < first) {
            int more = Math.max(first - cell, counts.length / 2);
            long[] wider = new long[counts.length + more];
            System.arraycopy(counts, 0, wider, more, counts.length);
            counts = wider;
            first -= more;
        } else if (cell - first >= counts.length) {
            counts = Arrays.copyOf(counts, Math.max(cell - first + 1, counts.length + counts.length / 2));
        }
        counts[cell - first] += count;
    }

    public Ranks ranks() {
        double[] ends = new double[counts.length];
        long[] filled = new long[counts.length];
        int size = 0;
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                ends[size] = (first + i) / (double) cellsPerUnit;
                filled[size++] = counts[i];
            }
        }
        return Ranks.ofCells(Arrays.copyOf(ends, size), Arrays.copyOf(filled, size));
    }

    /** Counts of wider cells by number, each cell around a multiple of the width. */
    public SortedMap<Long, Long> wider(double width) {
        SortedMap<Long, Long> wide = new TreeMap<>();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                double middle = (first + i + 0.5) / cellsPerUnit;
                wide.merge(HistogramCells.cellOf(middle, width), counts[i], Long::sum);
            }
        }
        return wide;
    }
}
