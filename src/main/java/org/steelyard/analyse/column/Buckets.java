package org.steelyard.analyse.column;

import java.util.Arrays;
import java.util.function.IntUnaryOperator;
import java.util.stream.IntStream;
import org.steelyard.analyse.figure.Ascending;
import org.steelyard.analyse.figure.ExactValues;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Values;
import org.steelyard.check.result.Status;

/** The values of one measure put together by group: counted first, then laid side by side in one array. */
final class Buckets implements Grouped {

    private final FlightColumns columns;
    private final Measure measure;
    private final int[] starts;
    private final long[] marginal;
    private final long[] breached;
    private int[] bucketsOf;
    private double[] values = {};

    /**
     * Counts the known values.
     *
     * @param columns the season
     * @param measure which values
     * @param bucketOf the bucket of a flight, from 0
     * @param buckets how many there are
     */
    Buckets(FlightColumns columns, Measure measure, IntUnaryOperator bucketOf, int buckets) {
        this.columns = columns;
        this.measure = measure;
        bucketsOf = new int[columns.flights()];
        starts = new int[buckets + 1];
        marginal = new long[buckets];
        breached = new long[buckets];
        NumberColumn column = columns.of(measure);
        for (int flight = 0; flight < bucketsOf.length; flight++) {
            if (column.knows(flight)) {
                bucketsOf[flight] = bucketOf.applyAsInt(flight);
                count(columns.status(flight), bucketsOf[flight]);
            }
        }
        for (int bucket = 0; bucket < buckets; bucket++) {
            starts[bucket + 1] += starts[bucket];
        }
    }

    /**
     * Lays the values side by side when they are first asked for, as many only want to know how many there are; taken
     * in ascending order, each bucket has them in that order.
     */
    private double[] values() {
        if (values.length == 0 && bucketsOf.length > 0) {
            Ascending ascending = columns.ascending(measure);
            NumberColumn column = columns.of(measure);
            values = new double[ascending.size()];
            int[] next = starts.clone();
            for (int i = 0; i < values.length; i++) {
                int flight = ascending.position(i);
                values[next[bucketsOf[flight]]++] = column.get(flight);
            }
            bucketsOf = new int[0]; // of no more use, and four bytes a flight
        }
        return values;
    }

    private void count(Status status, int bucket) {
        starts[bucket + 1]++;
        switch (status) {
            case CLEAN -> {}
            case MARGINAL -> marginal[bucket]++;
            case BREACHED -> breached[bucket]++;
        }
    }

    @Override
    public long n(int bucket) {
        return size(bucket);
    }

    private int size(int bucket) {
        return starts[bucket + 1] - starts[bucket];
    }

    /** The values of a bucket, ascending, not to be changed: where it holds all, they are not copied. */
    double[] sorted(int bucket) {
        double[] all = values();
        return size(bucket) == all.length ? all : Arrays.copyOfRange(all, starts[bucket], starts[bucket + 1]);
    }

    @Override
    public Values values(int bucket) {
        return ExactValues.ofSorted(sorted(bucket));
    }

    @Override
    public Values together(IntStream buckets) {
        double[] all = values();
        int[] together = buckets.toArray();
        double[] sorted = new double[Arrays.stream(together).map(this::size).sum()];
        int next = 0;
        for (int bucket : together) {
            System.arraycopy(all, starts[bucket], sorted, next, size(bucket));
            next += size(bucket);
        }
        Arrays.sort(sorted);
        return ExactValues.ofSorted(sorted);
    }

    @Override
    public long marginal(int bucket) {
        return marginal[bucket];
    }

    @Override
    public long breached(int bucket) {
        return breached[bucket];
    }
}
