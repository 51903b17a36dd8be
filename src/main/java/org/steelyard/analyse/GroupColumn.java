package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * For every flight the group to which it belongs, as the position of the group among those met so far.
 *
 * @param <K> what tells groups apart
 */
final class GroupColumn<K> {

    private final String grouping;
    private final Function<K, String> label;
    private final Comparator<K> order;
    private final Map<K, Integer> positions = new HashMap<>();
    private final List<K> keys = new ArrayList<>();
    private final CodeColumn codes = new CodeColumn();

    GroupColumn(String grouping, Function<K, String> label, Comparator<K> order) {
        this.grouping = grouping;
        this.label = label;
        this.order = order;
    }

    static GroupColumn<String> ofNames(String grouping) {
        return new GroupColumn<>(grouping, name -> name.isBlank() ? "not given" : name, GroupOrder.BY_NAME);
    }

    /** Takes the next flight's group and hands back its position. */
    int add(K key) {
        int position = position(key);
        add(position);
        return position;
    }

    /** Takes the next flight's group by its {@link #position}. */
    void add(int position) {
        codes.add(position);
    }

    /** The position of a group, which is kept for it if it is new. */
    int position(K key) {
        Integer known = positions.get(key);
        if (known != null) {
            return known;
        }
        positions.put(key, keys.size());
        keys.add(key);
        return keys.size() - 1;
    }

    String grouping() {
        return grouping;
    }

    int groups() {
        return keys.size();
    }

    int size() {
        return codes.size();
    }

    int of(int flight) {
        return codes.get(flight);
    }

    K key(int position) {
        return keys.get(position);
    }

    String label(int position) {
        return label.apply(keys.get(position));
    }

    /** Positions of the groups in the order in which people look for them. */
    int[] inOrder() {
        return IntStream.range(0, keys.size())
                .boxed()
                .sorted(Comparator.comparing(keys::get, order))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
