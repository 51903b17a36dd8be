package org.steelyard.model;

import java.util.Objects;

/**
 * One aircraft: a registration with its basic mass and CG from weighing, without crew, pantry and usable fuel.
 *
 * @param registration as written in inputs
 * @param type its type
 * @param basic basic mass, more than zero, with its moment
 */
public record Tail(String registration, AircraftType type, MassMoment basic) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the registration is blank or the mass is not more than zero
     */
    public Tail {
        Require.text("registration", registration);
        Objects.requireNonNull(type);
        Require.positive("basic massKg", basic.massKg());
    }
}
