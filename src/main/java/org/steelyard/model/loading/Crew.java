package org.steelyard.model.loading;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.steelyard.model.type.CrewRole;
import org.steelyard.model.unit.Require;

/**
 * Crew and pantry of one flight; what is not given is the type's standard.
 *
 * @param flightCrew number of flight crew
 * @param cabinCrew number of cabin crew
 * @param flightCrewKg actual mass of all flight crew together in kg, in place of the scheme's
 * @param pantryCode code of the pantry variation; blank for the standard one
 * @param stations who sits at each of the type's crew stations, in its order, empty at stations of a role of which
 *     nothing is said; an empty list where nothing is said of any. A role that is given here is not given above
 */
public record Crew(
        OptionalInt flightCrew,
        OptionalInt cabinCrew,
        OptionalDouble flightCrewKg,
        String pantryCode,
        List<Optional<CrewStationLoad>> stations) {

    /** The type's standard crew and pantry. */
    public static final Crew STANDARD = new Crew(OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.empty(), "");

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public Crew {
        flightCrew.ifPresent(count -> Require.notNegative("flightCrew", count));
        cabinCrew.ifPresent(count -> Require.notNegative("cabinCrew", count));
        flightCrewKg.ifPresent(mass -> Require.notNegative("flightCrewKg", mass));
        Objects.requireNonNull(pantryCode);
        stations = List.copyOf(stations);
    }

    /**
     * Crew by number, who fill the stations in the type's order.
     *
     * @param flightCrew number of flight crew
     * @param cabinCrew number of cabin crew
     * @param flightCrewKg actual mass of all flight crew together in kg, in place of the scheme's
     * @param pantryCode code of the pantry variation; blank for the standard one
     */
    public Crew(OptionalInt flightCrew, OptionalInt cabinCrew, OptionalDouble flightCrewKg, String pantryCode) {
        this(flightCrew, cabinCrew, flightCrewKg, pantryCode, List.of());
    }

    /**
     * The number of crew of a role.
     *
     * @param role flight or cabin crew
     * @return the number given, empty for the standard
     */
    public OptionalInt count(CrewRole role) {
        return role == CrewRole.FLIGHT ? flightCrew : cabinCrew;
    }

    /**
     * Who sits at a station.
     *
     * @param station which, from 0 in the type's order
     * @return its crew; empty where nothing is said of its role station by station
     */
    public Optional<CrewStationLoad> at(int station) {
        return stations.isEmpty() ? Optional.empty() : stations.get(station);
    }
}
