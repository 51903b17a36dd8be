package org.steelyard.read.text;

import java.util.Locale;

/** Blanks as people see them: spaces, no-break spaces, line breaks and marks without width. */
public final class Blanks {

    private Blanks() {}

    public static boolean isBlank(char c) {
        if (c < 0x80) {
            return c <= ' ' || c == 0x7f;
        }
        return Character.isWhitespace(c) || Character.isSpaceChar(c) || c == '\uFEFF' || c == '\u200B';
    }

    public static boolean isBlank(String text) {
        for (int i = 0; i < text.length(); i++) {
            if (!isBlank(text.charAt(i))) {
                return false;
            }
        }
        return true;
    }

    /** The text without blanks around it. */
    public static String strip(String text) {
        int from = 0;
        int to = text.length();
        while (from < to && isBlank(text.charAt(from))) {
            from++;
        }
        while (to > from && isBlank(text.charAt(to - 1))) {
            to--;
        }
        return from == 0 && to == text.length() ? text : text.substring(from, to);
    }

    /** A name for comparing without regard to case and to surrounding or repeated blanks. */
    public static String fold(String name) {
        return isFolded(name) ? name : folded(name);
    }

    /** Whether nothing is to be done, as is so of most. */
    private static boolean isFolded(String name) {
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (c <= ' ' || c >= 0x7f || (c >= 'A' && c <= 'Z')) {
                return false;
            }
        }
        return true;
    }

    private static String folded(String name) {
        StringBuilder folded = new StringBuilder(name.length());
        for (int i = 0; i < name.length(); i++) {
            char c = name.charAt(i);
            if (!isBlank(c)) {
                folded.append(c);
            } else if (!folded.isEmpty() && folded.charAt(folded.length() - 1) != ' ') {
                folded.append(' ');
            }
        }
        return Blanks.strip(folded.toString()).toLowerCase(Locale.ROOT);
    }
}
