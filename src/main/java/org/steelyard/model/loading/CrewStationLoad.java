package org.steelyard.model.loading;

import java.util.OptionalDouble;
import org.steelyard.model.unit.Require;

/**
 * Who sits at one crew station, where an input says so.
 *
 * @param count how many, not negative
 * @param actualKg their actual mass together in kg, baggage included where it is aboard with them, in place of the
 *     scheme's
 */
public record CrewStationLoad(int count, OptionalDouble actualKg) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public CrewStationLoad {
        Require.notNegative("crew at a station", count);
        actualKg.ifPresent(mass -> Require.notNegative("crew actualKg", mass));
    }
}
