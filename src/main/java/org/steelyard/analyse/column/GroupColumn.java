package org.steelyard.analyse.column;

import java.util.Comparator;
import java.util.function.Function;

/**
 * For every flight the group to which it belongs, as the position of the group among those met so far.
 *
 * @param <K> what tells groups apart
 */
public final class GroupColumn<K> extends GroupNames<K> {

    private final CodeColumn codes = new CodeColumn();
    private boolean leftOut;

    GroupColumn(String grouping, Function<K, String> label, Comparator<K> order) {
        super(grouping, label, order);
    }

    static GroupColumn<String> ofNames(String grouping) {
        return new GroupColumn<>(grouping, name -> name.isBlank() ? "not given" : name, GroupOrder.BY_NAME);
    }

    /** Takes the next flight's group. */
    void add(K key) {
        if (!leftOut) {
            add(make(key));
        }
    }

    /** Takes the next flight's group by its position. */
    void add(int position) {
        codes.add(position);
    }

    /** Lets go of all that is held, and takes nothing any more. */
    void leaveOut() {
        leftOut = true;
        codes.clear();
        clear();
    }

    int size() {
        return codes.size();
    }

    public int of(int flight) {
        return codes.get(flight);
    }
}
