package org.steelyard.model;

import java.util.Objects;

/**
 * How the aircraft is set for the flight.
 *
 * @param flaps take-off flap setting; blank if not given
 * @param thrustRating thrust rating; blank if not given
 * @param landingFlaps landing flap setting; blank if not given
 */
public record FlightSetting(String flaps, String thrustRating, String landingFlaps) {

    /** Checks that nothing is missing. */
    public FlightSetting {
        Objects.requireNonNull(flaps);
        Objects.requireNonNull(thrustRating);
        Objects.requireNonNull(landingFlaps);
    }
}
