package org.steelyard.analyse.change;

import java.util.Comparator;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeMap;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.column.StatusTally;
import org.steelyard.analyse.figure.MeanDifference;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;

/** One of two seasons to compare: sums by group, flight by flight, none of which is held. For one thread. */
public final class SeasonSide {

    /**
     * A kind of finding.
     *
     * @param code kind
     * @param severity breach or marginal
     */
    public record Kind(FindingCode code, Severity severity) {}

    /**
     * What a comparison needs of a flight.
     *
     * @param typeId type
     * @param flaps take-off flap setting; blank if not given
     * @param thrust thrust rating of its take-off scale; blank for a scale of any rating, or none
     * @param groups its group by each grouping, as tail and route; blank groups are left out
     * @param takeoffCgPercentMac take-off CG
     * @param trimUnits take-off trim, if there is one
     * @param status status
     */
    public record Flight(
            String typeId,
            String flaps,
            String thrust,
            Map<String, String> groups,
            double takeoffCgPercentMac,
            OptionalDouble trimUnits,
            Status status) {

        public Flight {
            groups = Map.copyOf(groups);
        }
    }

    public record GroupKey(String grouping, String typeId, String flaps, String thrust, String group)
            implements Comparable<GroupKey> {

        private static final Comparator<GroupKey> ORDER = Comparator.comparing(GroupKey::grouping)
                .thenComparing(GroupKey::typeId)
                .thenComparing(GroupKey::flaps)
                .thenComparing(GroupKey::thrust)
                .thenComparing(GroupKey::group);

        @Override
        public int compareTo(GroupKey other) {
            return ORDER.compare(this, other);
        }

        public GroupKey(String grouping, String typeId, String group) {
            this(grouping, typeId, "", "", group);
        }
    }

    /** Count, mean and squares of a growing sample (Welford). */
    static final class Sums {

        private long n;
        private double mean;
        private double squares;

        void add(double value) {
            n++;
            double from = value - mean;
            mean += from / n;
            squares += from * (value - mean);
        }

        MeanDifference.Sample sample() {
            return new MeanDifference.Sample(n, mean, squares);
        }
    }

    static final String TYPE = "type";

    private final Map<GroupKey, Sums> cg = new HashMap<>();
    private final Map<GroupKey, Sums> trim = new HashMap<>();
    private final Map<GroupKey, StatusTally.Counts> counts = new HashMap<>();
    private final Map<String, Map<Kind, Long>> kinds = new TreeMap<>();
    private long flights;

    /**
     * Takes one more flight.
     *
     * @param flight the flight
     */
    public void add(Flight flight) {
        flights++;
        add(flight, TYPE, flight.typeId());
        flight.groups().forEach((grouping, group) -> {
            if (!group.isBlank()) {
                add(flight, grouping, group);
            }
        });
    }

    private void add(Flight flight, String grouping, String group) {
        GroupKey key = new GroupKey(grouping, flight.typeId(), group);
        cg.computeIfAbsent(key, absent -> new Sums()).add(flight.takeoffCgPercentMac());
        counts.computeIfAbsent(key, absent -> new StatusTally.Counts()).add(flight.status());
        if (flight.trimUnits().isPresent()) {
            GroupKey scale = new GroupKey(grouping, flight.typeId(), flight.flaps(), flight.thrust(), group);
            trim.computeIfAbsent(scale, absent -> new Sums())
                    .add(flight.trimUnits().getAsDouble());
        }
    }

    /**
     * Takes the kinds of findings of one flight; notes do not count.
     *
     * @param typeId its type
     * @param found each kind once
     */
    public void found(String typeId, Set<Kind> found) {
        for (Kind kind : found) {
            if (kind.severity() != Severity.NOTE) {
                kinds.computeIfAbsent(typeId, absent -> new HashMap<>()).merge(kind, 1L, Long::sum);
            }
        }
    }

    /** How many flights were taken. */
    public long flights() {
        return flights;
    }

    Map<GroupKey, Sums> cg() {
        return Map.copyOf(cg);
    }

    Map<GroupKey, Sums> trim() {
        return Map.copyOf(trim);
    }

    StatusCount count(GroupKey key) {
        return counts.getOrDefault(key, new StatusTally.Counts()).named(key.group());
    }

    Set<GroupKey> keys() {
        return Set.copyOf(counts.keySet());
    }

    Map<String, Map<Kind, Long>> kinds() {
        return Map.copyOf(kinds);
    }
}
