package org.steelyard.read.text;

import java.util.Locale;

/** Trim settings in words: a number, then UP for nose-up or DN for nose-down, in any case, as {@code 0.2 UP}. */
public final class TrimText {

    private TrimText() {}

    public static boolean isInWords(String text) {
        String upper = text.toUpperCase(Locale.ROOT);
        return upper.endsWith("UP") || upper.endsWith("DN");
    }

    /** Units, nose-up positive; NaN if the number is none or has a sign as well. */
    public static double parse(String text, char decimal) {
        String number = Blanks.strip(text.substring(0, text.length() - 2));
        double units = number.startsWith("-") || number.startsWith("+")
                ? Double.NaN
                : NumberGrammar.parse(number, decimal, false);
        return text.toUpperCase(Locale.ROOT).endsWith("UP") || units == 0 ? units : -units;
    }
}
