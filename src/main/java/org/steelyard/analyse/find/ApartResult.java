package org.steelyard.analyse.find;

import java.util.List;

/**
 * Groups of one kind that lie apart from the rest of their type.
 *
 * @param grouping tail, route, or the heading of a carried column
 * @param tested how many groups were tested, and so made up for
 * @param apart those that lie apart, by type, the farthest first
 */
public record ApartResult(String grouping, int tested, List<GroupApart> apart) {

    public ApartResult {
        apart = List.copyOf(apart);
    }
}
