package org.steelyard.read.text;

import org.steelyard.model.input.DigitGrouping;

/** Takes the signs between groups of three digits out of a number, where a heading map declares them. */
public final class Grouping {

    private static final int GROUP = 3;

    private Grouping() {}

    /** The number without them; as it stands where there are none, or where one is not behind a group. */
    public static String without(String text, char decimal, DigitGrouping grouping) {
        int end = text.indexOf(decimal) < 0 ? text.length() : text.indexOf(decimal);
        StringBuilder digits = new StringBuilder();
        int inGroup = 0;
        boolean grouped = false;
        for (int i = 0; i < end; i++) {
            char c = text.charAt(i);
            if (grouping.isSign(c)) {
                if (inGroup == 0 || (grouped ? inGroup != GROUP : inGroup > GROUP)) {
                    return text;
                }
                grouped = true;
                inGroup = 0;
            } else {
                digits.append(c);
                inGroup += c >= '0' && c <= '9' ? 1 : 0;
            }
        }
        return grouped && inGroup == GROUP
                ? digits.append(text, end, text.length()).toString()
                : text;
    }
}
