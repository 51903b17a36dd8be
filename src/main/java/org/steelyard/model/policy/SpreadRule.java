package org.steelyard.model.policy;

import java.util.Objects;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Require;

/**
 * How much what is aboard varies about the figures it is counted with: standard deviations, all independent of each
 * other, and how passengers take their seats.
 *
 * @param seating how passengers take the seats of a zone
 * @param maleKg of the mass of an adult man in kg
 * @param femaleKg of the mass of an adult woman in kg
 * @param adultKg of the mass of an adult of either sex in kg
 * @param childKg of the mass of a child in kg
 * @param bagKg of the mass of a bag in kg
 * @param holdPositionM of the centroid of a hold's contents about the hold's arm, in m
 * @param fuelDensityPercent of the density of fuel, in per cent of it, the same for all tanks
 * @param fuelQuantityPercent of the quantity in a tank, in per cent of it, for each tank on its own
 * @param basicMassPercent of the basic mass, in per cent of it
 * @param basicCgPercentMac of the basic CG, in % MAC
 */
public record SpreadRule(
        SeatingRule seating,
        double maleKg,
        double femaleKg,
        double adultKg,
        double childKg,
        double bagKg,
        double holdPositionM,
        double fuelDensityPercent,
        double fuelQuantityPercent,
        double basicMassPercent,
        double basicCgPercentMac) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public SpreadRule {
        Objects.requireNonNull(seating);
        Require.notNegative("maleKg", maleKg);
        Require.notNegative("femaleKg", femaleKg);
        Require.notNegative("adultKg", adultKg);
        Require.notNegative("childKg", childKg);
        Require.notNegative("bagKg", bagKg);
        Require.notNegative("holdPositionM", holdPositionM);
        Require.notNegative("fuelDensityPercent", fuelDensityPercent);
        Require.notNegative("fuelQuantityPercent", fuelQuantityPercent);
        Require.notNegative("basicMassPercent", basicMassPercent);
        Require.notNegative("basicCgPercentMac", basicCgPercentMac);
    }

    /**
     * The standard deviation of one person's mass.
     *
     * @param category who; an infant has none
     * @return in kg
     */
    public double personKg(PassengerCategory category) {
        return switch (category) {
            case MALE -> maleKg;
            case FEMALE -> femaleKg;
            case ADULT -> adultKg;
            case CHILD -> childKg;
            case INFANT -> 0;
        };
    }
}
