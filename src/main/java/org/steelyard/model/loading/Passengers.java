package org.steelyard.model.loading;

import org.steelyard.model.type.MassScheme;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Require;

/**
 * Counts of passengers by category.
 *
 * @param male adult men
 * @param female adult women
 * @param adult adults counted without their sex
 * @param child children, each on a seat
 * @param infant infants on laps, without a seat
 */
public record Passengers(int male, int female, int adult, int child, int infant) {

    /** Nobody. */
    public static final Passengers NONE = new Passengers(0, 0, 0, 0, 0);

    /**
     * Checks the counts.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public Passengers {
        Require.notNegative("male", male);
        Require.notNegative("female", female);
        Require.notNegative("adult", adult);
        Require.notNegative("child", child);
        Require.notNegative("infant", infant);
    }

    /**
     * Adults counted without their sex.
     *
     * @param count how many
     * @return as many adults and nobody else
     */
    public static Passengers adults(int count) {
        return new Passengers(0, 0, count, 0, 0);
    }

    /**
     * How many seats they take.
     *
     * @return everybody but the infants
     */
    public int seated() {
        return male + female + adult + child;
    }

    /**
     * Their mass by a scheme.
     *
     * @param scheme standard masses
     * @return mass in kg
     */
    public double massKg(MassScheme scheme) {
        return male * scheme.maleKg()
                + female * scheme.femaleKg()
                + adult * scheme.adultKg()
                + child * scheme.childKg()
                + infant * scheme.infantKg();
    }

    /**
     * Both together.
     *
     * @param other further passengers
     * @return the sum, category by category
     */
    public Passengers plus(Passengers other) {
        return new Passengers(
                male + other.male,
                female + other.female,
                adult + other.adult,
                child + other.child,
                infant + other.infant);
    }

    /**
     * The count of one category.
     *
     * @param category which
     * @return how many
     */
    public int count(PassengerCategory category) {
        return switch (category) {
            case MALE -> male;
            case FEMALE -> female;
            case ADULT -> adult;
            case CHILD -> child;
            case INFANT -> infant;
        };
    }
}
