package org.steelyard.model.input;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.type.PassengerCategory;
import org.steelyard.model.unit.Require;

/**
 * What one column of a source means.
 *
 * @param heading heading in the source, compared without regard to case and surrounding or repeated blanks
 * @param field what it means
 * @param place zone, hold or tank that it is for; blank for all together
 * @param category category of passengers, where the field counts them
 * @param unit unit of its numbers
 * @param dateFormats patterns of its dates, where it holds dates; empty for year-month-day
 * @param required whether a file without the column cannot be read
 * @param blank what a blank cell means, where it holds load; {@link BlankLoad#NOT_SAID} for what the map says
 */
public record ColumnRule(
        String heading,
        Field field,
        String place,
        PassengerCategory category,
        ColumnUnit unit,
        List<String> dateFormats,
        boolean required,
        BlankLoad blank) {

    /**
     * Checks that field and unit fit.
     *
     * @throws IllegalArgumentException if the heading is blank, the field cannot be in the unit, or says what a blank
     *     means and is no load
     */
    public ColumnRule {
        Require.text("heading", heading);
        Objects.requireNonNull(field);
        Objects.requireNonNull(place);
        Objects.requireNonNull(category);
        Objects.requireNonNull(unit);
        dateFormats = List.copyOf(dateFormats);
        Require.that(
                blank == BlankLoad.NOT_SAID || field.isLoad(),
                "field " + field.key() + " is no load, whose blank cells could mean none");
        Require.that(unit.suits(field), "field " + field.key() + " cannot be in '" + unit.symbol() + "'");
    }

    /**
     * A rule that leaves to the map what a blank cell means.
     *
     * @param heading heading in the source
     * @param field what it means
     * @param place zone, hold or tank that it is for; blank for all together
     * @param category category of passengers, where the field counts them
     * @param unit unit of its numbers
     * @param dateFormats patterns of its dates; empty for year-month-day
     * @param required whether a file without the column cannot be read
     */
    public ColumnRule(
            String heading,
            Field field,
            String place,
            PassengerCategory category,
            ColumnUnit unit,
            List<String> dateFormats,
            boolean required) {
        this(heading, field, place, category, unit, dateFormats, required, BlankLoad.NOT_SAID);
    }

    /**
     * A rule with at most one pattern of dates.
     *
     * @param heading heading in the source
     * @param field what it means
     * @param place zone, hold or tank that it is for; blank for all together
     * @param category category of passengers, where the field counts them
     * @param unit unit of its numbers
     * @param dateFormat pattern of its dates; blank for year-month-day
     * @param required whether a file without the column cannot be read
     */
    public ColumnRule(
            String heading,
            Field field,
            String place,
            PassengerCategory category,
            ColumnUnit unit,
            String dateFormat,
            boolean required) {
        this(heading, field, place, category, unit, dateFormat.isBlank() ? List.of() : List.of(dateFormat), required);
    }

    /**
     * The same rule for a heading as it stands in a file, with the unit that it names.
     *
     * @param unitInHeading the unit
     * @return the rule of that column
     */
    public ColumnRule in(ColumnUnit unitInHeading) {
        return new ColumnRule(heading, field, place, category, unitInHeading, dateFormats, required, blank);
    }
}
