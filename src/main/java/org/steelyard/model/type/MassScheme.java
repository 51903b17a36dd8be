package org.steelyard.model.type;

import org.steelyard.model.unit.Require;

/**
 * Standard masses of persons and bags, all in kg, as one published or operator's scheme sets them.
 *
 * @param id name used in the configuration
 * @param source where the figures come from
 * @param maleKg adult man
 * @param femaleKg adult woman
 * @param adultKg adult of either sex
 * @param childKg child on a seat
 * @param infantKg infant on a lap; zero where the adult's mass includes it
 * @param bagKg checked bag
 * @param flightCrewKg member of the flight crew
 * @param cabinCrewKg member of the cabin crew
 */
public record MassScheme(
        String id,
        String source,
        double maleKg,
        double femaleKg,
        double adultKg,
        double childKg,
        double infantKg,
        double bagKg,
        double flightCrewKg,
        double cabinCrewKg) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a text is blank, a mass is not more than zero, or the infant's is negative
     */
    public MassScheme {
        Require.text("scheme id", id);
        Require.text("scheme source", source);
        Require.positive("maleKg", maleKg);
        Require.positive("femaleKg", femaleKg);
        Require.positive("adultKg", adultKg);
        Require.positive("childKg", childKg);
        Require.notNegative("infantKg", infantKg);
        Require.positive("bagKg", bagKg);
        Require.positive("flightCrewKg", flightCrewKg);
        Require.positive("cabinCrewKg", cabinCrewKg);
    }

    /**
     * The mass of one person of a category.
     *
     * @param category which
     * @return standard mass in kg
     */
    public double massKg(PassengerCategory category) {
        return switch (category) {
            case MALE -> maleKg;
            case FEMALE -> femaleKg;
            case ADULT -> adultKg;
            case CHILD -> childKg;
            case INFANT -> infantKg;
        };
    }

    /**
     * The mass of one member of the crew.
     *
     * @param role which
     * @return standard mass in kg
     */
    public double massKg(CrewRole role) {
        return role == CrewRole.FLIGHT ? flightCrewKg : cabinCrewKg;
    }
}
