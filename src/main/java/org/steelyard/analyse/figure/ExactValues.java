package org.steelyard.analyse.figure;

import java.util.Arrays;

/** Figures that are all held, in ascending order. */
public final class ExactValues implements Values {

    private final double[] sorted;

    private ExactValues(double[] sorted) {
        this.sorted = sorted;
    }

    /** Figures in ascending order; the array is handed over. */
    public static ExactValues ofSorted(double... sorted) {
        return new ExactValues(sorted);
    }

    @Override
    public long n() {
        return sorted.length;
    }

    @Override
    public Spread spread() {
        return Spread.ofSorted(sorted, sorted.length);
    }

    @Override
    public TypicalRange range() {
        return TypicalRange.ofSorted(sorted, sorted.length);
    }

    @Override
    public MeanDifference.Sample sample() {
        Moments moments = Moments.of(sorted, sorted.length);
        double sd = moments.sd().orElse(0);
        return new MeanDifference.Sample(sorted.length, moments.mean(), sd * sd * (sorted.length - 1));
    }

    @Override
    public double median() {
        return Percentiles.inclusive(sorted, sorted.length, 50);
    }

    @Override
    public double medianDistance(double from) {
        double[] distances = new double[sorted.length];
        for (int i = 0; i < distances.length; i++) {
            distances[i] = Math.abs(sorted[i] - from);
        }
        Arrays.sort(distances);
        return Percentiles.inclusive(distances, distances.length, 50);
    }

    @Override
    public Ranks ranks(boolean inCells) {
        return inCells ? FineCells.of(Measure.TAKEOFF_CG, sorted).ranks() : Ranks.ofSorted(sorted);
    }
}
