package org.steelyard.read.heading;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.model.input.Slot;

/** The columns of a file that mean something, in its order. */
public final class BoundColumns {

    private final List<BoundColumn> all;
    private final Map<Slot, BoundColumn> firsts = new HashMap<>();
    private final Map<Slot, Integer> counts = new HashMap<>();

    BoundColumns(List<BoundColumn> columns) {
        all = List.copyOf(columns);
        for (BoundColumn column : all) {
            firsts.putIfAbsent(column.slot(), column);
            counts.merge(column.slot(), 1, Integer::sum);
        }
    }

    public List<BoundColumn> all() {
        return all;
    }

    /** The first column of a slot, if the file has one. */
    public Optional<BoundColumn> first(Slot slot) {
        return Optional.ofNullable(firsts.get(slot));
    }

    public boolean has(Slot slot) {
        return firsts.containsKey(slot);
    }

    public int count(Slot slot) {
        return counts.getOrDefault(slot, 0);
    }
}
