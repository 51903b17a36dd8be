package org.steelyard.model;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * Crew and pantry of one flight; what is not given is the type's standard.
 *
 * @param flightCrew number of flight crew
 * @param cabinCrew number of cabin crew
 * @param flightCrewKg actual mass of all flight crew together in kg, in place of the scheme's
 * @param pantryCode code of the pantry variation; blank for the standard one
 */
public record Crew(OptionalInt flightCrew, OptionalInt cabinCrew, OptionalDouble flightCrewKg, String pantryCode) {

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
}
