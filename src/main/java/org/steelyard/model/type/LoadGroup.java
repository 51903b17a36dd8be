package org.steelyard.model.type;

import java.util.List;
import org.steelyard.model.unit.Require;

/**
 * A limit on what several holds and zones carry together: a group of holds, or all that lies ahead of or behind a
 * station (a cumulative limit). Places are given by their position in the type's lists.
 *
 * @param id short name
 * @param name name in words
 * @param holds positions of the holds, from 0
 * @param zones positions of the cabin zones, from 0
 * @param maxKg largest mass together in kg, more than zero
 */
public record LoadGroup(String id, String name, List<Integer> holds, List<Integer> zones, double maxKg) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a text is blank, the group has fewer than two places, or the maximum is not
     *     more than zero
     */
    public LoadGroup {
        Require.text("group id", id);
        Require.text("group name", name);
        holds = List.copyOf(holds);
        zones = List.copyOf(zones);
        Require.that(holds.size() + zones.size() >= 2, "a group needs at least two places");
        Require.positive("maxKg", maxKg);
    }
}
