package org.steelyard.analyse.season;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.GroupOrder;
import org.steelyard.analyse.figure.MergeableMoments;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;

/**
 * Holds the difference between recorded and right settings by tail, and by the column that the policy names; not where
 * the load was shared out by a rule, as the right setting is then only assumed.
 */
public final class RecordedTrimTally implements Serializable {

    private static final long serialVersionUID = 1;

    private static final RecordedTrimRule NOTHING_BEYOND = new RecordedTrimRule(Double.MAX_VALUE, Double.MAX_VALUE, "");

    private static final Comparator<RecordedTrimGroup> TAILS_THEN_FARTHEST_OFF = Comparator.comparing(
                    (RecordedTrimGroup group) -> !group.kind().equals(RecordedTrimGroup.TAIL))
            .thenComparing(RecordedTrimGroup::kind)
            .thenComparing(RecordedTrimGroup::shareBeyond, Comparator.reverseOrder())
            .thenComparing(group -> -Math.abs(group.meanUnits()))
            .thenComparing(RecordedTrimGroup::name, GroupOrder.BY_NAME);

    private final double marginalUnits;
    private final String groupBy;
    private final Map<String, Map<String, Group>> groups = new HashMap<>();
    private final Set<String> leftOut = new HashSet<>();

    RecordedTrimTally(Policy policy) {
        RecordedTrimRule rule = policy.recordedTrim().orElse(NOTHING_BEYOND);
        marginalUnits = rule.marginalUnits();
        groupBy = rule.groupBy();
    }

    void add(AuditedFlight flight) {
        OptionalDouble difference = difference(flight);
        if (difference.isPresent()) {
            double units = difference.getAsDouble();
            String tail = flight.loading().tail().registration();
            add(RecordedTrimGroup.TAIL, tail, units);
            for (Extra extra : flight.loading().extras()) {
                if (!groupBy.isBlank() && extra.name().equalsIgnoreCase(groupBy)) {
                    add(groupBy, extra.value(), units);
                }
            }
        }
    }

    private void add(String kind, String name, double units) {
        if (!leftOut.contains(kind)) {
            Map<String, Group> ofKind = groups.computeIfAbsent(kind, absent -> new HashMap<>());
            ofKind.computeIfAbsent(name, absent -> new Group()).add(units, marginalUnits);
            leaveOutWhatIsTooMany(kind, ofKind);
        }
    }

    private void leaveOutWhatIsTooMany(String kind, Map<String, Group> ofKind) {
        if (ofKind.size() > GroupNames.MOST_GROUPS) {
            groups.remove(kind);
            leftOut.add(kind);
        }
    }

    /** Adds the differences of other flights. */
    void merge(RecordedTrimTally other) {
        leftOut.addAll(other.leftOut);
        groups.keySet().removeAll(leftOut);
        other.groups.forEach((kind, theirs) -> {
            if (!leftOut.contains(kind)) {
                Map<String, Group> ofKind = groups.computeIfAbsent(kind, absent -> new HashMap<>());
                theirs.forEach((name, group) ->
                        ofKind.computeIfAbsent(name, absent -> new Group()).merge(group));
                leaveOutWhatIsTooMany(kind, ofKind);
            }
        });
    }

    private static OptionalDouble difference(AuditedFlight flight) {
        OptionalDouble recorded = flight.loading().recordedTrimUnits();
        if (recorded.isEmpty()
                || flight.balance().loadIsShared()
                || flight.balance().takeoffTrim().isEmpty()) {
            return OptionalDouble.empty();
        }
        TrimResult trim = flight.balance().takeoffTrim().get();
        return trim.differenceUnits(recorded.getAsDouble());
    }

    /** The groups of all kinds but those by which nothing else of the season is grouped either. */
    public List<RecordedTrimGroup> groups(List<String> leftOutOfSeason) {
        List<RecordedTrimGroup> all = new ArrayList<>();
        groups.forEach((kind, ofKind) -> {
            if (!leftOutOfSeason.contains(kind)) {
                ofKind.forEach((name, group) -> all.add(group.named(kind, name)));
            }
        });
        all.sort(TAILS_THEN_FARTHEST_OFF);
        return all;
    }

    private static final class Group implements Serializable {

        private static final long serialVersionUID = 1;

        private final MergeableMoments differences = new MergeableMoments();
        private long noseUp;
        private long noseDown;

        void add(double units, double marginalUnits) {
            differences.add(units);
            noseUp += units > marginalUnits ? 1 : 0;
            noseDown += -units > marginalUnits ? 1 : 0;
        }

        void merge(Group other) {
            differences.merge(other.differences);
            noseUp += other.noseUp;
            noseDown += other.noseDown;
        }

        RecordedTrimGroup named(String kind, String name) {
            return new RecordedTrimGroup(
                    kind, name, differences.n(), differences.mean(), differences.sd(), noseUp, noseDown);
        }
    }
}
