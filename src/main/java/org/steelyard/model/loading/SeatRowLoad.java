package org.steelyard.model.loading;

import org.steelyard.model.unit.Require;

/**
 * Who sits in one seat row.
 *
 * @param row which row of the zone, from 0 in the type's order
 * @param seated how many seats are taken
 * @param massKg mass of everybody in the row in kg, not negative
 */
public record SeatRowLoad(int row, int seated, double massKg) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public SeatRowLoad {
        Require.notNegative("row", row);
        Require.notNegative("seated", seated);
        Require.notNegative("row massKg", massKg);
    }
}
