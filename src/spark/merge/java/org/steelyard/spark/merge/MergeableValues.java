package org.steelyard.spark.merge;

import java.io.Serializable;
import java.util.Arrays;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.distribution.NormalDistribution;
import org.steelyard.analyse.figure.ExactValues;
import org.steelyard.analyse.figure.FineCells;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.MeanDifference;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.MergeableMoments;
import org.steelyard.analyse.figure.Percentiles;
import org.steelyard.analyse.figure.Ranks;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.figure.TypicalRange;
import org.steelyard.analyse.figure.Values;

/**
 * The figures of one group, in parts that can be put together: all of them while they are few, then exact sums, counts
 * in narrow cells and a sketch of ranks.
 */
public final class MergeableValues implements Values, Serializable {

    private static final long serialVersionUID = 1;

    /** So many figures are held before a sketch takes their place; percentiles are exact up to then. */
    public static final int HELD = 4096;

    /** Up to so many figures the ranks of an interval are those of the binomial distribution itself. */
    private static final long BINOMIAL = 10_000_000;

    private static final double EACH_SIDE = 0.975;

    private final Measure measure;
    private final RankSketch.Maker maker;
    private final MergeableMoments moments = new MergeableMoments();
    private double[] held = new double[4];
    private int size;
    private long marginal;
    private long breached;
    private RankSketch sketch;
    private FineCells cells;

    public MergeableValues(Measure measure, RankSketch.Maker maker) {
        this.measure = measure;
        this.maker = maker;
    }

    public void add(double value, org.steelyard.check.result.Status status) {
        moments.add(value);
        switch (status) {
            case CLEAN -> {}
            case MARGINAL -> marginal++;
            case BREACHED -> breached++;
        }
        put(value);
    }

    private void put(double value) {
        if (isExact() && size < HELD) {
            if (size == held.length) {
                held = Arrays.copyOf(held, Math.min(HELD, 2 * size));
            }
            held[size++] = value;
            return;
        }
        letGo();
        sketch.add(value);
        cells.add(value);
    }

    /** Whether all figures are held. */
    boolean isExact() {
        return sketch == null;
    }

    private void letGo() {
        if (!isExact()) {
            return;
        }
        sketch = maker.make();
        cells = FineCells.of(measure, Arrays.copyOf(held, size));
        for (int i = 0; i < size; i++) {
            sketch.add(held[i]);
        }
        held = new double[0];
        size = 0;
    }

    /** Takes all that another holds; the other stays as it is. */
    public void merge(MergeableValues other) {
        moments.merge(other.moments);
        marginal += other.marginal;
        breached += other.breached;
        if (other.isExact()) {
            for (int i = 0; i < other.size; i++) {
                put(other.held[i]);
            }
        } else {
            letGo();
            sketch.merge(other.sketch);
            cells.merge(other.cells);
        }
    }

    public long marginal() {
        return marginal;
    }

    public long breached() {
        return breached;
    }

    /** By how much the rank of a percentile may be off; 0 where all are held. */
    public double rankError() {
        return isExact() ? 0 : sketch.rankError();
    }

    private double[] sorted() {
        double[] sorted = Arrays.copyOf(held, size);
        Arrays.sort(sorted);
        return sorted;
    }

    @Override
    public long n() {
        return moments.n();
    }

    @Override
    public Spread spread() {
        DoubleUnaryOperator at = percentiles();
        return new Spread(
                moments.n(),
                moments.mean(),
                moments.sd(),
                moments.min(),
                at.applyAsDouble(5),
                at.applyAsDouble(25),
                at.applyAsDouble(50),
                at.applyAsDouble(75),
                at.applyAsDouble(95),
                moments.max());
    }

    private DoubleUnaryOperator percentiles() {
        if (isExact()) {
            double[] sorted = sorted();
            return percent -> Percentiles.inclusive(sorted, size, (int) percent);
        }
        return percent -> sketch.quantile(percent / 100);
    }

    @Override
    public TypicalRange range() {
        if (isExact()) {
            return TypicalRange.ofSorted(sorted(), size);
        }
        double[] low = ranks(0.05);
        double[] high = ranks(0.95);
        return new TypicalRange(
                sketch.quantile(0.05), at(low[0]), at(low[1]), sketch.quantile(0.95), at(high[0]), at(high[1]));
    }

    /** The ranks, from 0 to 1, of the ends of a percentile's interval, farther apart by what the sketch may be off. */
    private double[] ranks(double p) {
        double n = moments.n();
        double low;
        double high;
        if (moments.n() <= BINOMIAL) {
            int[] ranks = TypicalRange.ranks((int) moments.n(), p);
            low = ranks[0] / n;
            high = ranks[1] / n;
        } else {
            double reach = new NormalDistribution(null, 0, 1).inverseCumulativeProbability(EACH_SIDE)
                            * Math.sqrt(p * (1 - p) / n)
                    + 1 / n;
            low = p - reach;
            high = p + reach;
        }
        return new double[] {low - sketch.rankError(), high + sketch.rankError()};
    }

    private OptionalDouble at(double rank) {
        return rank <= 0 || rank >= 1 ? OptionalDouble.empty() : OptionalDouble.of(sketch.quantile(rank));
    }

    @Override
    public MeanDifference.Sample sample() {
        return isExact()
                ? ExactValues.ofSorted(sorted()).sample()
                : new MeanDifference.Sample(moments.n(), moments.mean(), moments.deviations());
    }

    @Override
    public double median() {
        return percentiles().applyAsDouble(50);
    }

    @Override
    public double medianDistance(double from) {
        if (isExact()) {
            return ExactValues.ofSorted(sorted()).medianDistance(from);
        }
        double low = 0;
        double high = Math.max(moments.max() - from, from - moments.min());
        for (int halving = 0; halving < 60; halving++) {
            double middle = (low + high) / 2;
            if (sketch.rank(from + middle) - sketch.rank(from - middle) < 0.5) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }

    @Override
    public Ranks ranks(boolean inCells) {
        if (!isExact()) {
            return cells.ranks();
        }
        return inCells ? FineCells.of(measure, sorted()).ranks() : Ranks.ofSorted(sorted());
    }

    /** Counts of cells by number, each around a multiple of the width. */
    public SortedMap<Long, Long> cells(double width) {
        if (!isExact()) {
            return cells.wider(width);
        }
        SortedMap<Long, Long> counts = new TreeMap<>();
        for (int i = 0; i < size; i++) {
            counts.merge(HistogramCells.cellOf(held[i], width), 1L, Long::sum);
        }
        return counts;
    }
}
