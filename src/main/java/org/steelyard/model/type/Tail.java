package org.steelyard.model.type;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Require;

/**
 * One aircraft: a registration with its basic mass and CG from weighing, without crew, pantry and usable fuel.
 *
 * @param registration as written in inputs
 * @param type its type
 * @param basic basic mass, more than zero, with its moment
 * @param ownScheme standard masses for this tail in place of its type's
 */
public record Tail(String registration, AircraftType type, MassMoment basic, Optional<MassScheme> ownScheme) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the registration is blank or the mass is not more than zero
     */
    public Tail {
        Require.text("registration", registration);
        Objects.requireNonNull(type);
        Require.positive("basic massKg", basic.massKg());
        Objects.requireNonNull(ownScheme);
    }

    /**
     * The standard masses by which it counts where an input names none.
     *
     * @return its own scheme, else its type's
     */
    public MassScheme scheme() {
        return ownScheme.orElse(type.cabin().scheme());
    }
}
