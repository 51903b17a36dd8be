package org.steelyard.model.type;

import java.util.List;
import org.steelyard.model.unit.Require;

/**
 * A part of the cabin whose passengers count at one arm, or where the type has a row table and the input names the row,
 * at the arm of their row.
 *
 * @param id short name used in inputs, as A
 * @param name name in words
 * @param armM arm in m from the datum, aft positive
 * @param seats number of seats, at least 1
 * @param rows its seat rows from front to back, which have all of its seats; empty where the type gives none
 */
public record CabinZone(String id, String name, double armM, int seats, List<SeatRow> rows) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a text is blank, the arm is not finite, there is no seat, or the rows have
     *     more or fewer seats than the zone
     */
    public CabinZone {
        Require.text("zone id", id);
        Require.text("zone name", name);
        Require.finite("armM", armM);
        Require.that(seats >= 1, "a zone needs at least one seat, not " + seats);
        rows = List.copyOf(rows);
        int inRows = rows.stream().mapToInt(SeatRow::seats).sum();
        Require.that(
                rows.isEmpty() || inRows == seats,
                "the rows of zone " + id + " have " + inRows + " seats together, but the zone has " + seats);
    }
}
