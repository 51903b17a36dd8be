package org.steelyard.model.type;

import java.util.Optional;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.unit.Require;

/**
 * A compartment for baggage and cargo whose contents count at one arm.
 *
 * @param id short name used in inputs, as 1
 * @param name name in words
 * @param armM arm in m from the datum, aft positive
 * @param maxKg largest mass in kg, more than zero
 * @param floor what its floor carries, where the type gives it
 */
public record Hold(String id, String name, double armM, double maxKg, Optional<FloorLimit> floor) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if a text is blank, the arm is not finite or the maximum not more than zero
     */
    public Hold {
        Require.text("hold id", id);
        Require.text("hold name", name);
        Require.finite("armM", armM);
        Require.positive("maxKg", maxKg);
    }
}
