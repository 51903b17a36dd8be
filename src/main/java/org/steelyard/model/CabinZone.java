package org.steelyard.model;

import java.util.Objects;
import java.util.Optional;

/**
 * A part of the cabin whose passengers count at one arm.
 *
 * @param id short name used in inputs, as A
 * @param name name in words
 * @param armM arm in m from the datum, aft positive
 * @param seats number of seats, at least 1
 * @param rows how its seats are spread along the cabin; empty where that is not known
 */
public record CabinZone(String id, String name, double armM, int seats, Optional<SeatRows> rows) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a text is blank, the arm is not finite or there is no seat
     */
    public CabinZone {
        Require.text("zone id", id);
        Require.text("zone name", name);
        Require.finite("armM", armM);
        Require.that(seats >= 1, "a zone needs at least one seat, not " + seats);
        Objects.requireNonNull(rows);
        Require.that(
                rows.isEmpty() || rows.get().rows() <= seats,
                "a zone has no more rows than seats, of which it has " + seats);
    }

    /**
     * A zone whose rows are not known.
     *
     * @param id short name used in inputs, as A
     * @param name name in words
     * @param armM arm in m from the datum, aft positive
     * @param seats number of seats, at least 1
     */
    public CabinZone(String id, String name, double armM, int seats) {
        this(id, name, armM, seats, Optional.empty());
    }
}
