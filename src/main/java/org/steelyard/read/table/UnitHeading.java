package org.steelyard.read.table;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.UnitWords;

/**
 * A heading with the unit that stands at its end: {@code Fuel (kg)}, {@code Fuel [kg]}, {@code Fuel, kg},
 * {@code fuel_kg}, {@code Fuel kg}.
 *
 * @param words the heading without it
 * @param unit the unit; empty where it names none
 * @param anyGallon whether it names a gallon and not which
 */
public record UnitHeading(String words, Optional<ColumnUnit> unit, boolean anyGallon) {

    private static final int MOST_WORDS_OF_A_UNIT = 3;
    private static final List<String> BRACKETS = List.of("()", "[]", "{}");

    public static UnitHeading of(String heading) {
        String text = Blanks.strip(heading);
        for (String pair : BRACKETS) {
            int open = text.lastIndexOf(pair.charAt(0));
            if (open > 0 && text.charAt(text.length() - 1) == pair.charAt(1)) {
                return of(text, open, text.substring(open + 1, text.length() - 1));
            }
        }
        UnitHeading found = new UnitHeading(text, Optional.empty(), false);
        int from = text.length();
        for (int words = 1; words <= MOST_WORDS_OF_A_UNIT && from > 0; words++) {
            from = startOfWord(text, from);
            UnitHeading next = of(text, from, text.substring(from));
            boolean named =
                    next.unit().isPresent() || (next.anyGallon() && found.unit().isEmpty());
            found = named && from > 0 ? next : found;
        }
        return found;
    }

    private static UnitHeading of(String text, int from, String unit) {
        Optional<ColumnUnit> known = UnitWords.of(unit);
        boolean anyGallon = UnitWords.isAnyGallon(unit);
        return known.isPresent() || anyGallon
                ? new UnitHeading(withoutEnd(text.substring(0, from)), known, anyGallon)
                : new UnitHeading(text, Optional.empty(), false);
    }

    /** The start of the last word before a place; words part at blanks, underscores, commas and hyphens. */
    private static int startOfWord(String text, int before) {
        int i = before;
        while (i > 0 && isGap(text.charAt(i - 1))) {
            i--;
        }
        while (i > 0 && !isGap(text.charAt(i - 1))) {
            i--;
        }
        return i;
    }

    private static boolean isGap(char c) {
        return Blanks.isBlank(c) || c == '_' || c == ',' || c == '-';
    }

    private static String withoutEnd(String text) {
        int end = text.length();
        while (end > 0 && (isGap(text.charAt(end - 1)) || text.charAt(end - 1) == ':')) {
            end--;
        }
        return text.substring(0, end);
    }
}
