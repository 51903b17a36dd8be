package org.steelyard.read.text;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;

/**
 * A cell that says its own unit, taken apart: {@code 1 250 kg} into {@code 1 250} and {@code kg}.
 *
 * @param number the part up to the last digit before the unit
 * @param unit the rest, perhaps blank
 */
public record WrittenCell(String number, String unit) {

    private static final String IN_NUMBERS = "+-.,'\u2019";

    public static WrittenCell of(String text) {
        int end = 0;
        int i = 0;
        while (i < text.length() && (isDigit(text.charAt(i)) || isInNumbers(text.charAt(i)))) {
            i++;
            end = isDigit(text.charAt(i - 1)) ? i : end;
        }
        return new WrittenCell(text.substring(0, end), Blanks.strip(text.substring(end)));
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    private static boolean isInNumbers(char c) {
        return Blanks.isBlank(c) || IN_NUMBERS.indexOf(c) >= 0;
    }

    /** The unit, if it is one of the field. */
    public Optional<ColumnUnit> unitFor(Field field) {
        return UnitWords.of(unit).filter(known -> known.suits(field));
    }

    /** Why the cell has no unit of the field. */
    public String fault() {
        if (unit.isEmpty()) {
            return "the unit is missing";
        }
        if (UnitWords.isAnyGallon(unit)) {
            return "'" + unit + "' may be US or imperial gallons";
        }
        return (UnitWords.of(unit).isPresent() ? "a unit of another kind: '" : "unknown unit '") + unit + "'";
    }

    /** What a cell of the field looks like. */
    public static String expected(Field field) {
        List<String> units = Stream.of(ColumnUnit.values())
                .filter(unit -> unit.isUnit() && unit.suits(field))
                .map(ColumnUnit::symbol)
                .toList();
        return "a number and its unit, one of " + String.join(", ", units);
    }
}
