package org.steelyard.analyse.column;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The groups of one kind that a season has, each at a position of its own.
 *
 * @param <K> what tells groups apart
 */
public class GroupNames<K> {

    /** By what has more different values nothing is grouped: nobody looks at so many, and they take memory. */
    public static final int MOST_GROUPS = 50_000;

    private final GroupKind<K> kind;
    private final Map<K, Integer> positions = new HashMap<>();
    private final List<K> keys = new ArrayList<>();

    public GroupNames(GroupKind<K> kind) {
        this.kind = kind;
    }

    public final GroupKind<K> kind() {
        return kind;
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
        return kind.name();
    }

    public final int groups() {
        return keys.size();
    }

    public final K key(int position) {
        return keys.get(position);
    }

    public final String label(int position) {
        return kind.label(keys.get(position));
    }

    /** Lets go of all groups. */
    final void clear() {
        positions.clear();
        keys.clear();
    }

    /** Other groups of the same kind. */
    public final GroupNames<K> others(Iterable<K> others) {
        GroupNames<K> names = new GroupNames<>(kind);
        others.forEach(names::make);
        return names;
    }

    /** Positions of the groups in the order in which people look for them. */
    public final int[] inOrder() {
        return IntStream.range(0, keys.size())
                .boxed()
                .sorted(Comparator.comparing(keys::get, kind.order()))
                .mapToInt(Integer::intValue)
                .toArray();
    }
}
