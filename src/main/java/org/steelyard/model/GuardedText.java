package org.steelyard.model;

import java.util.regex.Pattern;

/**
 * Text made harmless for spreadsheets. A spreadsheet that opens a CSV file takes a cell for a formula if it begins with
 * {@code = + - @}, also in full width, a tab or a line break, and runs it. An apostrophe in front keeps such a cell
 * text (common practice). Every cell that the outputs write from data is guarded, and every cell that the readers read
 * from a CSV file is freed again, so that nothing changes on the way round:
 *
 * <ul>
 *   <li>{@code =A1} is written as {@code '=A1}; plain numbers as {@code -0.5} or {@code +12,5} stay as they are.
 *   <li>Text that already has apostrophes before such a character gets one more: {@code '=A1} becomes {@code ''=A1}.
 *   <li>Any other text stays, also with an apostrophe in front: {@code 'twas}.
 * </ul>
 */
public final class GuardedText {

    private static final char GUARD = '\'';
    private static final String STARTERS = "=+-@\t\r\n\uFF1D\uFF0B\uFF0D\uFF20";
    private static final Pattern NUMBER = Pattern.compile("[+-]?[0-9]+([.,][0-9]+)?");

    private GuardedText() {}

    /**
     * Whether a text begins with a sign that may begin a formula.
     *
     * @param text any text
     * @return true if it does, numbers included
     */
    public static boolean isFormulaLike(String text) {
        return !text.isEmpty() && STARTERS.indexOf(text.charAt(0)) >= 0;
    }

    /**
     * Makes a text harmless.
     *
     * @param text what is to be written
     * @return the text, with an apostrophe in front if it needs one
     */
    public static String guard(String text) {
        if (text.isEmpty() || !startsLikeFormula(text)) {
            return text;
        }
        return NUMBER.matcher(text).matches() ? text : GUARD + text;
    }

    /**
     * Undoes {@link #guard}.
     *
     * @param text what was written
     * @return what it was before; a text that was never guarded stays, unless apostrophes stand before a formula sign
     */
    public static String free(String text) {
        return !text.isEmpty() && text.charAt(0) == GUARD && startsLikeFormula(text) ? text.substring(1) : text;
    }

    private static boolean startsLikeFormula(String text) {
        int i = 0;
        while (i < text.length() && text.charAt(i) == GUARD) {
            i++;
        }
        return i < text.length() && STARTERS.indexOf(text.charAt(i)) >= 0;
    }
}
