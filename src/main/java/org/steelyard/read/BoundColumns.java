package org.steelyard.read;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The columns of a file that mean something, in its order. */
final class BoundColumns {

    private final List<BoundColumn> all;
    private final Map<Slot, BoundColumn> firsts = new EnumMap<>(Slot.class);
    private final Map<Slot, Integer> counts = new EnumMap<>(Slot.class);

    BoundColumns(List<BoundColumn> columns) {
        all = List.copyOf(columns);
        for (BoundColumn column : all) {
            firsts.putIfAbsent(column.slot(), column);
            counts.merge(column.slot(), 1, Integer::sum);
        }
    }

    List<BoundColumn> all() {
        return all;
    }

    /** The first column of a slot, if the file has one. */
    Optional<BoundColumn> first(Slot slot) {
        return Optional.ofNullable(firsts.get(slot));
    }

    boolean has(Slot slot) {
        return firsts.containsKey(slot);
    }

    int count(Slot slot) {
        return counts.getOrDefault(slot, 0);
    }
}
