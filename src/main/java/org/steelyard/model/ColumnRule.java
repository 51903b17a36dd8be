package org.steelyard.model;

import java.util.Objects;

/**
 * What one column of a source means.
 *
 * @param heading heading in the source, compared without regard to case and surrounding or repeated blanks
 * @param field what it means
 * @param place zone, hold or tank that it is for; blank for all together
 * @param category category of passengers, where the field counts them
 * @param unit unit of its numbers
 * @param dateFormat pattern of its dates, where it holds dates; blank for year-month-day
 * @param required whether a file without the column cannot be read
 */
public record ColumnRule(
        String heading,
        Field field,
        String place,
        PassengerCategory category,
        ColumnUnit unit,
        String dateFormat,
        boolean required) {

    /**
     * Checks that field and unit fit.
     *
     * @throws IllegalArgumentException if the heading is blank or the field cannot be in the unit
     */
    public ColumnRule {
        Require.text("heading", heading);
        Objects.requireNonNull(field);
        Objects.requireNonNull(place);
        Objects.requireNonNull(category);
        Objects.requireNonNull(unit);
        Objects.requireNonNull(dateFormat);
        Require.that(unit.suits(field), "field " + field.key() + " cannot be in '" + unit.symbol() + "'");
    }
}
