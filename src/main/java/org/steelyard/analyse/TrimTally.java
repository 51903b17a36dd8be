package org.steelyard.analyse;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Status;
import org.steelyard.model.Loading;
import org.steelyard.model.TrimBasis;
import org.steelyard.model.TrimUnit;

/** Holds take-off trim and CG of every flight as columns of numbers, one pair for each type and flap setting. */
final class TrimTally {

    private record Key(String typeId, String flaps) {}

    private static final Comparator<TrimGroup> BY_NAME = Comparator.comparing(TrimGroup::typeId, GroupOrder.BY_NAME)
            .thenComparing(TrimGroup::flaps, GroupOrder.BY_NAME);

    private final Map<Key, Group> groups = new HashMap<>();

    void add(AuditedFlight flight, Status status) {
        Loading loading = flight.loading();
        Key key = new Key(loading.type().id(), loading.setting().flaps());
        groups.computeIfAbsent(key, absent -> new Group()).add(flight, status);
    }

    List<TrimGroup> groups() {
        return groups.entrySet().stream()
                .map(entry -> entry.getValue().named(entry.getKey()))
                .sorted(BY_NAME)
                .toList();
    }

    private static final class Group {

        private final Numbers trimUnits = new Numbers();
        private final Numbers cgPercentMac = new Numbers();
        private final StatusTally.Counts counts = new StatusTally.Counts();
        private TrimUnit unit = TrimUnit.UNITS;
        private boolean estimated;

        void add(AuditedFlight flight, Status status) {
            counts.add(status);
            double armM = flight.balance().takeoff().armM();
            cgPercentMac.add(flight.loading().type().geometry().chord().percentAt(armM));
            flight.balance().takeoffTrim().ifPresent(this::add);
        }

        private void add(TrimResult trim) {
            unit = trim.scale().unit();
            estimated |= trim.scale().basis() == TrimBasis.ESTIMATE;
            trim.trimUnits().ifPresent(trimUnits::add);
        }

        TrimGroup named(Key key) {
            StatusCount count = counts.named(key.typeId());
            return new TrimGroup(
                    key.typeId(),
                    key.flaps(),
                    unit,
                    trimUnits.spread(),
                    cgPercentMac.spread().orElseThrow(),
                    count.marginal(),
                    count.breached(),
                    estimated);
        }
    }
}
