package org.steelyard.model;

/**
 * A part of the cabin whose passengers count at one arm.
 *
 * @param id short name used in inputs, as A
 * @param name name in words
 * @param armM arm in m from the datum, aft positive
 * @param seats number of seats, at least 1
 */
public record CabinZone(String id, String name, double armM, int seats) {

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
    }
}
