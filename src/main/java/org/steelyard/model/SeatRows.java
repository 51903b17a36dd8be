package org.steelyard.model;

/**
 * How the seats of a zone are spread along the cabin: rows at one pitch about the zone's arm, with as many seats in
 * each as there are, the first rows having one more where they do not come out even.
 *
 * @param rows number of rows, at least 1
 * @param pitchM distance from row to row in m, more than zero
 */
public record SeatRows(int rows, double pitchM) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if there is no row or no pitch
     */
    public SeatRows {
        Require.that(rows >= 1, "a zone has at least one row of seats, not " + rows);
        Require.positive("pitchM", pitchM);
    }
}
