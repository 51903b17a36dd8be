package org.steelyard.model;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * What sits in one cabin zone.
 *
 * @param passengers counts by category
 * @param actualKg actual mass of all of them together in kg, in place of the scheme's
 */
public record ZoneLoad(Passengers passengers, OptionalDouble actualKg) {

    /** An empty zone. */
    public static final ZoneLoad EMPTY = new ZoneLoad(Passengers.NONE, OptionalDouble.empty());

    /**
     * Checks the mass.
     *
     * @throws IllegalArgumentException if it is negative
     */
    public ZoneLoad {
        Objects.requireNonNull(passengers);
        actualKg.ifPresent(mass -> Require.notNegative("actualKg", mass));
    }

    /**
     * The mass of the zone's passengers.
     *
     * @param scheme standard masses, used where no actual mass is given
     * @return mass in kg
     */
    public double massKg(MassScheme scheme) {
        return actualKg.isPresent() ? actualKg.getAsDouble() : passengers.massKg(scheme);
    }
}
