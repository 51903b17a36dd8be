package org.steelyard.model.type;

import java.util.Objects;
import org.steelyard.model.unit.Require;

/**
 * Seats of crew at one arm. Stations of a role fill in the order in which the type lists them.
 *
 * @param id short name
 * @param role flight or cabin crew
 * @param armM arm in m from the datum, aft positive
 * @param seats number of seats, at least 1
 */
public record CrewStation(String id, CrewRole role, double armM, int seats) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the id is blank, the arm is not finite or there is no seat
     */
    public CrewStation {
        Require.text("crew station id", id);
        Objects.requireNonNull(role);
        Require.finite("armM", armM);
        Require.that(seats >= 1, "a crew station needs at least one seat, not " + seats);
    }
}
