package org.steelyard.model.loading;

import java.time.LocalDate;
import java.util.Objects;
import org.steelyard.model.unit.Require;

/**
 * Which flight.
 *
 * @param flight flight number or name
 * @param date date of departure
 * @param from departure place; may be blank
 * @param to destination; may be blank
 */
public record FlightIdent(String flight, LocalDate date, String from, String to) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the flight is blank
     */
    public FlightIdent {
        Require.text("flight", flight);
        Objects.requireNonNull(date);
        Objects.requireNonNull(from);
        Objects.requireNonNull(to);
    }

    /**
     * The route as people write it.
     *
     * @return both ends with a dash between them, a question mark for one that is not known; blank if neither is
     */
    public String route() {
        return from.isBlank() && to.isBlank() ? "" : known(from) + "–" + known(to);
    }

    private static String known(String place) {
        return place.isBlank() ? "?" : place;
    }
}
