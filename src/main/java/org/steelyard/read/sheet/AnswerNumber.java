package org.steelyard.read.sheet;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import org.steelyard.read.propose.NumberStyle;
import org.steelyard.read.text.Blanks;
import org.steelyard.read.text.NumberGrammar;

/**
 * A number as people write it: blanks, apostrophes, points or commas between groups of three digits, a point or a comma
 * before decimals. One point or comma before the last three digits may be either.
 *
 * @param value the number
 * @param halfStep half of its last place
 */
record AnswerNumber(double value, double halfStep) {

    /** What the text can mean: nothing, one number, or first the number in groups and then the one with decimals. */
    static List<AnswerNumber> of(String text) {
        Optional<Matcher> parts = parts(text);
        if (parts.isEmpty()) {
            return List.of();
        }
        String whole = digits(parts.get().group(1));
        String decimals = parts.get().group(4) == null ? "" : parts.get().group(4);
        String sign = plain(text).startsWith("-") ? "-" : "";
        AnswerNumber grouped = number(sign + whole, decimals);
        if (!isEither(parts.get())) {
            return List.of(grouped);
        }
        int before = whole.length() - 3;
        AnswerNumber decimal = number(sign + whole.substring(0, before), whole.substring(before));
        return whole.startsWith("0") ? List.of(decimal) : List.of(grouped, decimal);
    }

    /** The decimal sign that the text leaves no doubt of. */
    static Optional<Character> decimalSign(String text) {
        Optional<Matcher> parts = parts(text);
        if (parts.isEmpty() || isEither(parts.get())) {
            return Optional.empty();
        }
        String group = parts.get().group(2);
        if (parts.get().group(3) != null) {
            return Optional.of(parts.get().group(3).charAt(0));
        }
        return isMark(group) ? Optional.of(group.equals(",") ? '.' : ',') : Optional.empty();
    }

    private static Optional<Matcher> parts(String text) {
        Matcher parts = NumberStyle.NUMBER.matcher(plain(text));
        boolean fits =
                parts.matches() && (parts.group(3) == null || !parts.group(3).equals(parts.group(2)));
        return fits ? Optional.of(parts) : Optional.empty();
    }

    /** With the sign of keyboards for minus. */
    static String plain(String text) {
        boolean minus = text.startsWith("\u2212") || text.startsWith("\u2013");
        return minus ? "-" + Blanks.strip(text.substring(1)) : text;
    }

    private static boolean isMark(String group) {
        return ",".equals(group) || ".".equals(group);
    }

    private static boolean isEither(Matcher parts) {
        String group = parts.group(2);
        boolean once =
                isMark(group) && parts.group(1).indexOf(group) == parts.group(1).lastIndexOf(group);
        return once && parts.group(3) == null;
    }

    private static String digits(String text) {
        return text.replaceAll("[^0-9]", "");
    }

    private static AnswerNumber number(String whole, String decimals) {
        String text = decimals.isEmpty() ? whole : whole + "." + decimals;
        return new AnswerNumber(NumberGrammar.parse(text, '.', false), 0.5 * Math.pow(10, -decimals.length()));
    }
}
