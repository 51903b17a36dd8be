package org.steelyard.read.sheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steelyard.model.input.CgMeasure;
import org.steelyard.model.input.Claim;
import org.steelyard.model.input.ColumnUnit;

/** A trim setting as people write it: {@code 4.25 UP}, {@code UP 4,25}, {@code 0.4° nose down}, or a number alone. */
final class AnswerTrim {

    private static final Pattern SETTING = Pattern.compile(
            "([a-z. -]*?)\\s*([-+\u2212\u2013]?[0-9][0-9.,]*)\\s*(?:\u00B0|units?|deg(?:rees)?)?\\s*([a-z. -]*)");
    private static final Set<String> UP = Set.of("up", "nu", "noseup", "anu");
    private static final Set<String> DOWN = Set.of("dn", "down", "nd", "nosedown", "nosedn");
    private static final double MOST_UNITS = 90;

    private AnswerTrim() {}

    static Claim claim(String text, ColumnUnit unit) {
        return figure(text, unit)
                .map(Claim.class::cast)
                .orElse(new Claim.Unreadable(text, "a trim setting: a number, or one with UP or DN as 0.2 UP"));
    }

    private static Optional<Claim.Figure> figure(String text, ColumnUnit unit) {
        Matcher parts = SETTING.matcher(text.toLowerCase(Locale.ROOT));
        if (!parts.matches()) {
            return Optional.empty();
        }
        String word = (parts.group(1) + parts.group(3)).replaceAll("[^a-z]", "");
        List<AnswerNumber> numbers = AnswerNumber.of(parts.group(2));
        boolean signed = !Character.isDigit(parts.group(2).charAt(0));
        boolean known = word.isEmpty() || (!signed && (UP.contains(word) || DOWN.contains(word)));
        if (numbers.isEmpty() || !known) {
            return Optional.empty();
        }
        AnswerNumber number = numbers.get(numbers.size() - 1);
        boolean down = word.isEmpty() ? unit == ColumnUnit.NOSE_DOWN : DOWN.contains(word);
        double units = down && number.value() != 0 ? -number.value() : number.value();
        return Math.abs(units) <= MOST_UNITS
                ? Optional.of(new Claim.Figure(units, number.halfStep(), CgMeasure.PERCENT_MAC, text))
                : Optional.empty();
    }
}
