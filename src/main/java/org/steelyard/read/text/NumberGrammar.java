package org.steelyard.read.text;

import java.math.BigDecimal;

/**
 * Numbers in a strict grammar: an optional sign, digits, and optionally a decimal sign with more digits; behind it,
 * only where a workbook stored it so, an exponent. No thousands separators, no NaN, no hexadecimal, no letters behind
 * it.
 *
 * <p>Up to 15 digits the value is whole number divided by power of ten, both exact in a double, so the one division
 * rounds correctly (W. D. Clinger, "How to Read Floating Point Numbers Accurately", PLDI 1990, the exact case). Longer
 * ones go to {@link Double#parseDouble}.
 */
public final class NumberGrammar {

    private static final double[] POWERS = {
        1e0, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15
    };

    private NumberGrammar() {}

    /**
     * Reads a number.
     *
     * @param text without blanks around it
     * @param decimal the decimal sign, point or comma
     * @param exponent whether an exponent may follow
     * @return its value, perhaps infinite; NaN if it is not a number
     */
    public static double parse(String text, char decimal, boolean exponent) {
        int length = text.length();
        int start = length > 0 && (text.charAt(0) == '-' || text.charAt(0) == '+') ? 1 : 0;
        int whole = digitsFrom(text, start);
        if (whole == start) {
            return Double.NaN;
        }
        int end = whole;
        if (whole < length && text.charAt(whole) == decimal) {
            end = digitsFrom(text, whole + 1);
            if (end == whole + 1) {
                return Double.NaN;
            }
        }
        if (end < length) {
            return exponent && isExponent(text, end) ? Double.parseDouble(text) : Double.NaN;
        }
        double size =
                end - start <= 16 ? exact(text, start, whole, end) : Double.parseDouble(plain(text, start, whole));
        return text.charAt(0) == '-' && size != 0 ? -size : size;
    }

    /** What a stored number is as a percentage: the nearest to a hundred times its shortest decimal. */
    public static double percent(double value) {
        return BigDecimal.valueOf(value).movePointRight(2).doubleValue();
    }

    private static int digitsFrom(String text, int from) {
        int i = from;
        while (i < text.length() && text.charAt(i) >= '0' && text.charAt(i) <= '9') {
            i++;
        }
        return i;
    }

    private static boolean isExponent(String text, int from) {
        if (text.charAt(from) != 'E' && text.charAt(from) != 'e') {
            return false;
        }
        int start = from + 1;
        if (start < text.length() && (text.charAt(start) == '-' || text.charAt(start) == '+')) {
            start++;
        }
        return start < text.length() && digitsFrom(text, start) == text.length();
    }

    private static double exact(String text, int start, int whole, int end) {
        long digits = 0;
        for (int i = start; i < end; i++) {
            if (i != whole) {
                digits = digits * 10 + (text.charAt(i) - '0');
            }
        }
        if (digits > 1L << 53) {
            return Double.parseDouble(plain(text, start, whole));
        }
        return end == whole ? digits : digits / POWERS[end - whole - 1];
    }

    private static String plain(String text, int start, int whole) {
        return whole == text.length()
                ? text.substring(start)
                : text.substring(start, whole) + "." + text.substring(whole + 1);
    }
}
