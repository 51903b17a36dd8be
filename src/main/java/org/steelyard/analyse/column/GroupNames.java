package org.steelyard.analyse.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * The groups of one kind that a season has, each at a position of its own.
 *
 * @param <K> what tells groups apart
 */
public class GroupNames<K> {

    /** By what has more different values nothing is grouped: nobody looks at so many, and they take memory. */
    public static final int MOST_GROUPS = 50_000;

    private final String grouping;
    private final Function<K, String> label;
    private final Comparator<K> order;
    private final Map<K, Integer> positions = new HashMap<>();
    private final List<K> keys = new ArrayList<>();

    GroupNames(String grouping, Function<K, String> label, Comparator<K> order) {
        this.grouping = grouping;
        this.label = label;
        this.order = order;
    }

    /** The position of a group, which is made if it is not there. */
    final int make(K key) {
        Integer known = positions.get(key);
        if (known != null) {
            return known;
        }
        positions.put(key, keys.size());
        keys.add(key);
        return keys.size() - 1;
    }

    /** The position of a group; -1 if the season does not have it. */
    public final int find(K key) {
        return positions.getOrDefault(key, -1);
    }

    public final String grouping() {
        return grouping;
    }

    public final int groups() {
        return keys.size();
    }

    public final K key(int position) {
        return keys.get(position);
    }

    public final String label(int position) {
        return label.apply(keys.get(position));
    }

    /** Lets go of all groups. */
    final void clear() {
        positions.clear();
        keys.clear();
    }

    /** Other groups of the same kind. */
    public final GroupNames<K> others(Iterable<K> others) {
        GroupNames<K> names = new GroupNames<>(grouping, label, order);
        others.forEach(names::make);
        return names;
    }

    /** Positions of the groups in the order in which people look for them. */
    public final int[] inOrder() {
        return IntStream.range(0, keys.size())
                .boxed()
                .sorted(Comparator.comparing(keys::get, order))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
