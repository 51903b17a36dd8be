package org.steelyard.analyse.column;

import java.io.Serializable;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.steelyard.check.result.Status;

/**
 * Counts flights by status for each group of some kind.
 *
 * @param <K> what tells groups apart
 */
public final class StatusTally<K> implements Serializable {

    private static final long serialVersionUID = 1;

    private final Map<K, Counts> groups = new HashMap<>();

    /** Adds the counts of another. */
    public void merge(StatusTally<K> other) {
        other.groups.forEach((group, counts) ->
                groups.computeIfAbsent(group, key -> new Counts()).merge(counts));
    }

    public void remove(K group) {
        groups.remove(group);
    }

    public void clear() {
        groups.clear();
    }

    public void add(K group, Status status) {
        of(group).add(status);
    }

    /** The counts of a group, to be added to. */
    Counts of(K group) {
        return groups.computeIfAbsent(group, key -> new Counts());
    }

    public List<StatusCount> counts(Function<K, String> label, Comparator<StatusCount> order) {
        return groups.entrySet().stream()
                .map(entry -> entry.getValue().named(label.apply(entry.getKey())))
                .sorted(order)
                .toList();
    }

    /** Flights of one group by status. */
    public static final class Counts implements Serializable {

        private static final long serialVersionUID = 1;

        private long clean;
        private long marginal;
        private long breached;

        public void add(Status status) {
            switch (status) {
                case CLEAN -> clean++;
                case MARGINAL -> marginal++;
                case BREACHED -> breached++;
            }
        }

        public void merge(Counts other) {
            clean += other.clean;
            marginal += other.marginal;
            breached += other.breached;
        }

        public StatusCount named(String group) {
            return new StatusCount(group, clean + marginal + breached, clean, marginal, breached);
        }
    }
}
