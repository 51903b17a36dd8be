package org.steelyard.model.unit;

/** What comes from outside, as it stands in a message: on one line, and not endless. */
public final class OneLine {

    /** Characters that a value or heading may have in a message. */
    public static final int LONGEST = 120;

    /** Characters that a reason, or what is expected, may have in a message: they may list names. */
    public static final int LONGEST_TEXT = 1_000;

    private OneLine() {}

    /**
     * A value or heading.
     *
     * @param value as it stands in the input
     * @return at most {@link #LONGEST} characters of it, behind them an ellipsis if there are more; control characters,
     *     line ends and marks of direction are blanks
     */
    public static String value(String value) {
        return text(value, LONGEST);
    }

    /**
     * A reason, or what is expected.
     *
     * @param text words in which values or names may stand
     * @return at most {@link #LONGEST_TEXT} characters of it, as {@link #value} does it
     */
    public static String text(String text) {
        return text(text, LONGEST_TEXT);
    }

    /**
     * A text of any length, as a terminal may be given it.
     *
     * @param text what is to be shown
     * @return all of it; control characters, line ends and marks of direction are blanks
     */
    public static String whole(String text) {
        return text(text, Integer.MAX_VALUE);
    }

    private static String text(String text, int longest) {
        String part = text;
        if (text.length() > longest) {
            int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
            part = text.substring(0, end) + "…";
        }
        for (int i = 0; i < part.length(); i++) {
            if (isUnseen(part.charAt(i))) {
                return withBlanks(part);
            }
        }
        return part;
    }

    private static String withBlanks(String text) {
        StringBuilder shown = new StringBuilder(text);
        for (int i = 0; i < shown.length(); i++) {
            if (isUnseen(shown.charAt(i))) {
                shown.setCharAt(i, ' ');
            }
        }
        return shown.toString();
    }

    /** Whether a character would break the line, steer a terminal or turn the direction of what follows. */
    private static boolean isUnseen(char c) {
        boolean direction = (c >= '\u202A' && c <= '\u202E')
                || (c >= '\u2066' && c <= '\u2069')
                || c == '\u200E'
                || c == '\u200F'
                || c == '\u061C';
        return Character.isISOControl(c) || c == '\u2028' || c == '\u2029' || direction;
    }
}
