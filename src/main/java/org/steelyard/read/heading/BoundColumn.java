package org.steelyard.read.heading;

import java.util.Optional;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.Slot;
import org.steelyard.read.text.DateFormat;

/**
 * A column of a file with what it means.
 *
 * @param order position among the columns that mean something, from 0
 * @param index position in the file, from 0
 * @param heading as it stands in the file, without blanks around it
 * @param rule what it means
 * @param slot what its cells add to
 * @param dates its dates, where it holds dates
 */
public record BoundColumn(
        int order, int index, String heading, ColumnRule rule, Slot slot, Optional<DateFormat> dates) {

    static BoundColumn of(int order, int index, String heading, ColumnRule rule) {
        Optional<DateFormat> dates = rule.field().kind() == Field.Kind.DATE
                ? Optional.of(new DateFormat(rule.dateFormats()))
                : Optional.empty();
        return new BoundColumn(order, index, heading, rule, Slot.of(rule), dates);
    }
}
