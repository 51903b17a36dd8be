package org.steelyard.spark.merge;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightMeasures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Excess;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.find.UnusualFlight;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.analyse.season.WorstFlights;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;

/**
 * Chooses the flights of a season that its outputs show one by one, whatever the parts in which they come: the first of
 * the input, those farthest outside a limit, those farthest off in CG and trim, and samples for pages and pictures. How
 * many there are does not depend on the size of the season.
 *
 * @param <R> what is kept of a flight, to make it anew
 */
public final class FlightChoice<R extends Serializable> implements Serializable {

    private static final long serialVersionUID = 1;
    private static final int UNUSUAL = UnusualFlight.KEPT_EACH_SIDE;

    /**
     * How many flights are shown.
     *
     * @param first the first so many of the input
     * @param worst those farthest outside, of each kind of limit
     * @param pageBreached breached flights of the page's sample
     * @param pageMarginal marginal ones
     * @param pageClean clean ones
     * @param cloud flights of a type in a picture, breached ones and others each
     */
    public record Sizes(int first, int worst, int pageBreached, int pageMarginal, int pageClean, int cloud)
            implements Serializable {

        private int page(Status status) {
            return switch (status) {
                case CLEAN -> pageClean;
                case MARGINAL -> pageMarginal;
                case BREACHED -> pageBreached;
            };
        }
    }

    /** What a flight is kept for. */
    private record Reason(String kind, Object group) implements Serializable {}

    private record Entry(double first, long second, long place) implements Serializable, Comparable<Entry> {

        private static final Comparator<Entry> ORDER = Comparator.comparingDouble(Entry::first)
                .thenComparingLong(Entry::second)
                .thenComparingLong(Entry::place);

        @Override
        public int compareTo(Entry other) {
            return ORDER.compare(this, other);
        }
    }

    private final Sizes sizes;
    private final Map<Reason, PriorityQueue<Entry>> lowest = new HashMap<>();
    private final Map<Long, R> rows = new HashMap<>();

    /**
     * An empty choice.
     *
     * @param sizes how many flights are shown
     */
    public FlightChoice(Sizes sizes) {
        this.sizes = sizes;
    }

    /**
     * Takes a flight if it is among those to be shown so far.
     *
     * @param placed the flight
     * @param pageRank its rank in the page's sample, lowest first
     * @param row gives what is kept of it
     */
    public void offer(PlacedFlight placed, long pageRank, Supplier<R> row) {
        AuditedFlight flight = placed.flight();
        long place = placed.place();
        Status status = flight.assessment().status();
        String type = flight.loading().type().id();
        boolean kept = place < sizes.first();
        kept |= offer(new Reason("page", status), sizes.page(status), new Entry(0, pageRank, place));
        kept |= offer(
                new Reason(status == Status.BREACHED ? "cloud, breached" : "cloud", type),
                sizes.cloud(),
                new Entry(0, FlightCloud.scrambled(place), place));
        if (status == Status.BREACHED) {
            for (WorstFlight worst : WorstFlights.byKind(flight)) {
                Excess excess = worst.excess();
                Reason reason = new Reason("worst", List.of(worst.exceeded(), excess.unit()));
                kept |= offer(reason, sizes.worst(), new Entry(-excess.figure(), 0, place));
            }
        }
        TrimSetting setting = TrimSetting.of(flight);
        kept |= unusual(
                "CG", setting, FlightMeasures.of(flight, Measure.TAKEOFF_CG).orElseThrow(), place);
        var trim = flight.balance().takeoffTrim();
        if (trim.isPresent() && trim.get().trimUnits().isPresent()) {
            kept |= unusual("trim", setting, trim.get().trimUnits().getAsDouble(), place);
        }
        if (kept) {
            rows.put(place, row.get());
            if (rows.size() > 2 * most() + sizes.first()) {
                prune();
            }
        }
    }

    private boolean unusual(String measure, TrimSetting setting, double value, long place) {
        boolean low = offer(new Reason("low " + measure, setting), UNUSUAL, new Entry(value, place, place));
        return offer(new Reason("high " + measure, setting), UNUSUAL, new Entry(-value, -place, place)) || low;
    }

    private boolean offer(Reason reason, int most, Entry entry) {
        PriorityQueue<Entry> queue =
                lowest.computeIfAbsent(reason, absent -> new PriorityQueue<>(Collections.reverseOrder()));
        if (queue.size() < most) {
            return queue.add(entry);
        }
        if (most == 0 || entry.compareTo(queue.element()) > 0) {
            return false;
        }
        queue.remove();
        return queue.add(entry);
    }

    private int most() {
        return lowest.values().stream().mapToInt(PriorityQueue::size).sum();
    }

    private void prune() {
        Set<Long> needed = new HashSet<>();
        lowest.values().forEach(queue -> queue.forEach(entry -> needed.add(entry.place())));
        rows.keySet().removeIf(place -> place >= sizes.first() && !needed.contains(place));
    }

    /**
     * Takes what another has kept of other flights.
     *
     * @param other another choice of the same sizes
     */
    public void merge(FlightChoice<R> other) {
        rows.putAll(other.rows);
        other.lowest.forEach((reason, entries) -> {
            int most = reason.kind().equals("page")
                    ? sizes.page((Status) reason.group())
                    : reason.kind().startsWith("cloud")
                            ? sizes.cloud()
                            : reason.kind().equals("worst") ? sizes.worst() : UNUSUAL;
            List<Entry> all = new ArrayList<>(entries);
            all.forEach(entry -> offer(reason, most, entry));
        });
        prune();
    }

    /** What is kept, by place. */
    public SortedMap<Long, R> chosen() {
        prune();
        return new TreeMap<>(rows);
    }
}
