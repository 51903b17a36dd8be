package org.steelyard.model.unit;

import java.util.regex.Pattern;

/**
 * Text made harmless for spreadsheets. A spreadsheet that opens a CSV file takes a cell for a formula if it begins with
 * {@code = + - @}, also in full width, a tab or a line break, and runs it. Where cells begin is the spreadsheet's to
 * say: set to semicolons, tabs or bars it cuts a cell of ours in the middle, and at a line break too, whatever quotes
 * stand around it. An apostrophe in front keeps such a piece text (common practice). Every cell that the outputs write
 * from data is guarded wherever a cell may begin in it, and every cell that the readers read from rejected rows is
 * freed again, so that nothing changes on the way round:
 *
 * <ul>
 *   <li>{@code =A1} is written as {@code '=A1}, {@code x;=A1} as {@code x;'=A1}; a cell that is a plain number as
 *       {@code -0.5} or {@code +12,5} stays as it is.
 *   <li>Quotes and apostrophes before such a character do not hide it: {@code '=A1} becomes {@code ''=A1}.
 *   <li>Any other text stays, also with an apostrophe in front: {@code 'twas}.
 * </ul>
 */
public final class GuardedText {

    private static final char GUARD = '\'';
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?");

    private GuardedText() {}

    /**
     * Whether a text begins with a sign that may begin a formula.
     *
     * @param text any text
     * @return true if it does, numbers included
     */
    public static boolean isFormulaLike(String text) {
        return !text.isEmpty() && (isSign(text.charAt(0)) || isControl(text.charAt(0)));
    }

    /**
     * Whether some program takes a character for the end of a cell: one that stands in a cell is quoted.
     *
     * @param c a character
     * @return true for a comma, semicolon, bar, tab or line break
     */
    public static boolean isSeparator(char c) {
        return c == ',' || c == ';' || c == '|' || isControl(c);
    }

    /**
     * Makes a text harmless.
     *
     * @param text what is to be written
     * @return the text, with an apostrophe before each sign that might begin a formula
     */
    public static String guard(String text) {
        int first = 0;
        while (first < text.length() && !beginsFormula(text, first)) {
            first++;
        }
        if (first == text.length() || NUMBER.matcher(text).matches()) {
            return text;
        }
        StringBuilder guarded = new StringBuilder(text.length() + 2).append(text, 0, first);
        for (int i = first; i < text.length(); i++) {
            if (beginsFormula(text, i)) {
                guarded.append(GUARD);
            }
            guarded.append(text.charAt(i));
        }
        return guarded.toString();
    }

    /**
     * Undoes {@link #guard}.
     *
     * @param text what was written
     * @return what it was before; a text that was never guarded stays, unless apostrophes stand before a formula sign
     */
    public static String free(String text) {
        if (text.indexOf(GUARD) < 0) {
            return text;
        }
        StringBuilder freed = new StringBuilder(text.length());
        for (int i = 0; i < text.length(); i++) {
            boolean guards = text.charAt(i) == GUARD && i + 1 < text.length() && beginsFormula(text, i + 1);
            if (!guards) {
                freed.append(text.charAt(i));
            }
        }
        return freed.toString();
    }

    private static boolean beginsFormula(String text, int at) {
        char c = text.charAt(at);
        if (!isSign(c) && !isControl(c)) {
            return false;
        }
        int before = at - 1;
        while (before >= 0 && (text.charAt(before) == GUARD || text.charAt(before) == '"')) {
            before--;
        }
        return before < 0 || (isSign(c) && isSeparator(text.charAt(before)));
    }

    private static boolean isSign(char c) {
        return switch (c) {
            case '=', '+', '-', '@', '\uFF1D', '\uFF0B', '\uFF0D', '\uFF20' -> true;
            default -> false;
        };
    }

    private static boolean isControl(char c) {
        return c == '\t' || c == '\r' || c == '\n';
    }
}
