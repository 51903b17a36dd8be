package org.steelyard.remedy;

import java.util.Objects;

/**
 * How much could still be added at one place, all else left alone, with every limit kept.
 *
 * @param name the zone or hold in words
 * @param cabin whether it is a zone
 * @param roomKg largest mass in kg; where it is smaller, every smaller mass keeps all limits too
 * @param persons for a zone, how many adults of standard mass that is; 0 for a hold
 * @param limitedBy what forbids more
 */
public record PlaceRoom(String name, boolean cabin, double roomKg, int persons, RoomLimit limitedBy) {

    public PlaceRoom {
        Objects.requireNonNull(name);
        Objects.requireNonNull(limitedBy);
    }
}
