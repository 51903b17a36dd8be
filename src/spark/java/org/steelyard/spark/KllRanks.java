package org.steelyard.spark;

import java.io.Serializable;
import org.apache.datasketches.kll.KllDoublesSketch;
import org.apache.datasketches.memory.Memory;
import org.apache.datasketches.quantilescommon.QuantileSearchCriteria;
import org.steelyard.spark.merge.RankSketch;

/**
 * Ranks by the KLL sketch of Apache DataSketches (Karnin, Lang and Liberty, Optimal Quantile Approximation in Streams,
 * 2016). With k = 2,000 a rank is within 0.14 % of the truth with a confidence of 99 %, in some 48 kB.
 */
final class KllRanks implements RankSketch {

    static final int K = 2000;

    private static final long serialVersionUID = 1;

    private final KllDoublesSketch sketch;

    KllRanks() {
        this(KllDoublesSketch.newHeapInstance(K));
    }

    private KllRanks(KllDoublesSketch sketch) {
        this.sketch = sketch;
    }

    @Override
    public void add(double value) {
        sketch.update(value);
    }

    @Override
    public void merge(RankSketch other) {
        sketch.merge(((KllRanks) other).sketch);
    }

    @Override
    public double quantile(double rank) {
        return sketch.getQuantile(rank, QuantileSearchCriteria.INCLUSIVE);
    }

    @Override
    public double rank(double value) {
        return sketch.getRank(value, QuantileSearchCriteria.INCLUSIVE);
    }

    @Override
    public double rankError() {
        return sketch.getNormalizedRankError(false);
    }

    private static final class Sent implements Serializable {

        private static final long serialVersionUID = 1;

        private final byte[] bytes;

        Sent(KllDoublesSketch sketch) {
            bytes = sketch.toByteArray();
        }

        private Object readResolve() {
            return new KllRanks(KllDoublesSketch.heapify(Memory.wrap(bytes)));
        }
    }

    private Object writeReplace() {
        return new Sent(sketch);
    }
}
