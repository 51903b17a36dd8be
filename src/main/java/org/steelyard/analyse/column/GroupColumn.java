package org.steelyard.analyse.column;

import java.util.Comparator;
import java.util.function.Function;

/**
 * For every flight the group to which it belongs, as the position of the group among those met so far.
 *
 * @param <K> what tells groups apart
 */
public final class GroupColumn<K> extends GroupNames<K> {

    /** A column with a value of its own for each flight is no grouping; reasons are given for the first so many. */
    public static final int MOST_GROUPS = 50_000;

    private final CodeColumn codes = new CodeColumn();

    GroupColumn(String grouping, Function<K, String> label, Comparator<K> order) {
        super(grouping, label, order);
    }

    static GroupColumn<String> ofNames(String grouping) {
        return new GroupColumn<>(grouping, name -> name.isBlank() ? "not given" : name, GroupOrder.BY_NAME);
    }

    /** Takes the next flight's group and hands back its position. */
    int add(K key) {
        int position = make(key);
        add(position);
        return position;
    }

    /** Takes the next flight's group by its position. */
    void add(int position) {
        codes.add(position);
    }

    int size() {
        return codes.size();
    }

    public int of(int flight) {
        return codes.get(flight);
    }
}
