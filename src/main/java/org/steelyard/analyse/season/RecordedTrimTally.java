package org.steelyard.analyse.season;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.steelyard.analyse.column.GroupColumn;
import org.steelyard.analyse.column.GroupOrder;
import org.steelyard.analyse.figure.GrowingColumn;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;

/**
 * Holds the difference between recorded and right settings by tail, and by the column that the policy names; not where
 * the load was shared out by a rule, as the right setting is then only assumed.
 */
final class RecordedTrimTally {

    /** Comparable, so that a map of names with the same hash code is searched in order and not one by one. */
    record Key(String kind, String name) implements Comparable<Key> {

        private static final Comparator<Key> ORDER =
                Comparator.comparing(Key::kind).thenComparing(Key::name);

        @Override
        public int compareTo(Key other) {
            return ORDER.compare(this, other);
        }
    }

    static final RecordedTrimRule NOTHING_BEYOND = new RecordedTrimRule(Double.MAX_VALUE, Double.MAX_VALUE, "");

    static final Comparator<RecordedTrimGroup> TAILS_THEN_FARTHEST_OFF = Comparator.comparing(
                    (RecordedTrimGroup group) -> !group.kind().equals(RecordedTrimGroup.TAIL))
            .thenComparing(RecordedTrimGroup::kind)
            .thenComparing(RecordedTrimGroup::shareBeyond, Comparator.reverseOrder())
            .thenComparing(group -> -Math.abs(group.meanUnits()))
            .thenComparing(RecordedTrimGroup::name, GroupOrder.BY_NAME);

    private final RecordedTrimRule rule;
    private final Map<Key, Group> groups = new HashMap<>();
    private boolean tooMany;
    private int named;

    RecordedTrimTally(Policy policy) {
        rule = policy.recordedTrim().orElse(NOTHING_BEYOND);
    }

    void add(AuditedFlight flight) {
        OptionalDouble difference = difference(flight);
        if (difference.isPresent()) {
            double units = difference.getAsDouble();
            String tail = flight.loading().tail().registration();
            groups.computeIfAbsent(new Key(RecordedTrimGroup.TAIL, tail), absent -> new Group())
                    .add(units);
            for (Extra extra : flight.loading().extras()) {
                if (!tooMany && !rule.groupBy().isBlank() && extra.name().equalsIgnoreCase(rule.groupBy())) {
                    groups.computeIfAbsent(new Key(rule.groupBy(), extra.value()), this::namedGroup)
                            .add(units);
                    leaveOutIfTooMany();
                }
            }
        }
    }

    private Group namedGroup(Key key) {
        named++;
        return new Group();
    }

    private void leaveOutIfTooMany() {
        if (named > GroupColumn.MOST_GROUPS) {
            tooMany = true;
            groups.keySet().removeIf(key -> key.kind().equals(rule.groupBy()));
        }
    }

    static OptionalDouble difference(AuditedFlight flight) {
        OptionalDouble recorded = flight.loading().recordedTrimUnits();
        if (recorded.isEmpty()
                || flight.balance().loadIsShared()
                || flight.balance().takeoffTrim().isEmpty()) {
            return OptionalDouble.empty();
        }
        TrimResult trim = flight.balance().takeoffTrim().get();
        return trim.differenceUnits(recorded.getAsDouble());
    }

    List<RecordedTrimGroup> groups() {
        return groups.entrySet().stream()
                .map(entry -> entry.getValue().named(entry.getKey()))
                .sorted(TAILS_THEN_FARTHEST_OFF)
                .toList();
    }

    private final class Group {

        private final GrowingColumn differences = new GrowingColumn();
        private long noseUp;
        private long noseDown;

        void add(double units) {
            differences.add(units);
            noseUp += units > rule.marginalUnits() ? 1 : 0;
            noseDown += -units > rule.marginalUnits() ? 1 : 0;
        }

        RecordedTrimGroup named(Key key) {
            Spread spread = differences.spread().orElseThrow();
            return new RecordedTrimGroup(
                    key.kind(), key.name(), spread.n(), spread.mean(), spread.sd(), noseUp, noseDown);
        }
    }
}
