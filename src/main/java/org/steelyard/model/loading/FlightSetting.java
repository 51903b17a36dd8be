package org.steelyard.model.loading;

import java.util.Objects;
import org.steelyard.model.trim.FlapName;

/**
 * How the aircraft is set for the flight. Flap settings go by their names, however they are written ({@link FlapName}).
 *
 * @param flaps take-off flap setting; blank if not given
 * @param thrustRating thrust rating; blank if not given
 * @param landingFlaps landing flap setting; blank if not given
 */
public record FlightSetting(String flaps, String thrustRating, String landingFlaps) {

    /** Checks that nothing is missing, and names the flap settings. */
    public FlightSetting {
        flaps = FlapName.of(flaps);
        Objects.requireNonNull(thrustRating);
        landingFlaps = FlapName.of(landingFlaps);
    }
}
