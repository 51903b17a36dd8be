package org.steelyard.report.output.page;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.PriorityQueue;
import org.steelyard.check.result.Status;

/**
 * Which flights a page holds: all while they are few; else the breached ones first, then the marginal ones, then clean
 * ones, up to the {@link PageLimits}. Where a status has more than fit, those with the lowest random numbers are kept,
 * which is a simple random sample. The numbers come from a fixed seed and the flight's place in the season, so the same
 * season gives the same sample. Memory is bounded: a flight that comes too high is turned away at once.
 *
 * <p>The random numbers are those of SplitMix64 (Steele, Lea and Flood, Fast splittable pseudorandom number generators,
 * 2014), each from its place in the sequence.
 */
public final class PageSample {

    static final long SEED = 20_250_101;

    private static final long GOLDEN = 0x9E3779B97F4A7C15L;

    private final PageLimits limits;
    private final Map<Status, Lowest> kept = new EnumMap<>(Status.class);
    private final Map<Status, Long> seen = new EnumMap<>(Status.class);

    PageSample(PageLimits limits) {
        this.limits = limits;
        kept.put(Status.BREACHED, new Lowest(limits.breached()));
        kept.put(Status.MARGINAL, new Lowest(limits.outside()));
        kept.put(Status.CLEAN, new Lowest(limits.all()));
        for (Status status : Status.values()) {
            seen.put(status, 0L);
        }
    }

    /**
     * Takes the next flight.
     *
     * @param place its place in the season, each once
     * @return whether it may still be on the page in the end
     */
    boolean offer(Status status, long place) {
        seen.merge(status, 1L, Long::sum);
        return kept.get(status).offer(random(place));
    }

    /** Says how many flights of a status the season has, where only those are offered that may be kept. */
    void seen(Status status, long flights) {
        seen.put(status, flights);
    }

    /** No more flights come: the statuses share the page. */
    void close() {
        int breached = kept.get(Status.BREACHED).size();
        int marginal = kept.get(Status.MARGINAL).reduce(limits.outside() - breached);
        kept.get(Status.CLEAN).reduce(limits.all() - breached - marginal);
    }

    /** Whether a flight that was offered is on the page, once {@link #close} is called. */
    boolean holds(Status status, long place) {
        return kept.get(status).holds(random(place));
    }

    /** How many flights of a status came. */
    long seen(Status status) {
        return seen.get(status);
    }

    /** How many of them are kept. */
    int kept(Status status) {
        return kept.get(status).size();
    }

    public static long random(long place) {
        long z = SEED + (place + 1) * GOLDEN;
        z = (z ^ (z >>> 30)) * 0xBF58476D1CE4E5B9L;
        z = (z ^ (z >>> 27)) * 0x94D049BB133111EBL;
        return z ^ (z >>> 31);
    }

    /** The lowest of the numbers offered. */
    private static final class Lowest {

        private final PriorityQueue<Long> numbers = new PriorityQueue<>(Comparator.reverseOrder());
        private int most;

        Lowest(int most) {
            this.most = most;
        }

        boolean offer(long number) {
            if (numbers.size() < most) {
                return numbers.add(number);
            }
            if (most == 0 || number > numbers.element()) {
                return false;
            }
            numbers.remove();
            return numbers.add(number);
        }

        int reduce(int fewer) {
            most = Math.min(most, fewer);
            while (numbers.size() > most) {
                numbers.remove();
            }
            return numbers.size();
        }

        boolean holds(long number) {
            return !numbers.isEmpty() && number <= numbers.element();
        }

        int size() {
            return numbers.size();
        }
    }
}
