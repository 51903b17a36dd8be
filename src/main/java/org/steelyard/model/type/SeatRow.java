package org.steelyard.model.type;

import org.steelyard.model.unit.Require;

/**
 * A row of seats across the cabin.
 *
 * @param id number or name used in inputs, as 12
 * @param armM arm in m from the datum, aft positive
 * @param seats number of seats, at least 1
 */
public record SeatRow(String id, double armM, int seats) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the id is blank, the arm is not finite or there is no seat
     */
    public SeatRow {
        Require.text("row id", id);
        Require.finite("armM", armM);
        Require.that(seats >= 1, "a row needs at least one seat, not " + seats);
    }
}
