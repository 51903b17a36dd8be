package org.steelyard.check.result;

import java.util.Objects;

/**
 * How much traffic load a flight may take: the least of what the zero-fuel, take-off and landing limits leave above the
 * dry operating mass (14 CFR 121.693; CAT.POL.MAB.105).
 *
 * @param allowedKg largest traffic load in kg; negative if even the empty aircraft is too heavy
 * @param actualKg traffic load aboard in kg
 * @param limitedBy which limit sets it
 */
public record TrafficLoad(double allowedKg, double actualKg, LimitingMass limitedBy) {

    public TrafficLoad {
        Objects.requireNonNull(limitedBy);
    }

    /**
     * What could still be taken.
     *
     * @return underload in kg; negative if too much is aboard
     */
    public double underloadKg() {
        return allowedKg - actualKg;
    }
}
