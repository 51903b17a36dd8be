package org.steelyard.report.book;

import java.util.Locale;
import java.util.concurrent.atomic.LongAdder;
import java.util.regex.Pattern;

/**
 * Makes any text fit for a cell. Control characters, which the format cannot carry, are shown by their control picture
 * (NUL as ␀); half surrogates and non-characters as �; line ends become line feeds. What the format would read as an
 * escape ({@code _x0041_}) is escaped itself (ECMA-376 part 1, 22.9.2.19, ST_Xstring). Too long a text is cut with a
 * mark that says so, and counted. Safe for use by several threads.
 */
public final class WorkbookText {

    private static final Pattern ESCAPE = Pattern.compile("_(?=x[0-9A-Fa-f]{4}_)");
    private static final String ESCAPED_UNDERSCORE = "_x005F_";
    private static final char CONTROL_PICTURES = '\u2400';
    private static final char REPLACEMENT = '\uFFFD';

    private final int maxChars;
    private final LongAdder cutCells = new LongAdder();

    public WorkbookText(int maxChars) {
        this.maxChars = maxChars;
    }

    /** How many cells were cut so far. */
    public long cutCells() {
        return cutCells.sum();
    }

    /** Notes that something did not fit. */
    public void countCut() {
        cutCells.increment();
    }

    /** The text as a cell can hold it; the same object if nothing is to be done. */
    public String cell(String raw) {
        String shown = isPlain(raw) ? raw : escaped(visible(raw));
        return shown.length() <= maxChars ? shown : cut(shown);
    }

    private static boolean isPlain(String text) {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c < ' ' || c == '_' || c == '\u007F' || c >= Character.MIN_SURROGATE) {
                return false;
            }
        }
        return true;
    }

    private static String visible(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.replace("\r\n", "\n").codePoints().map(WorkbookText::visible).forEach(shown::appendCodePoint);
        return shown.toString();
    }

    private static int visible(int c) {
        if (c == '\n' || c == '\t') {
            return c;
        }
        if (c == '\r') {
            return '\n';
        }
        if (c < ' ') {
            return CONTROL_PICTURES + c;
        }
        boolean half = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
        return c == 0x7F ? CONTROL_PICTURES + 0x21 : half || c == 0xFFFE || c == 0xFFFF ? REPLACEMENT : c;
    }

    private static String escaped(String text) {
        return ESCAPE.matcher(text).replaceAll(ESCAPED_UNDERSCORE);
    }

    private String cut(String text) {
        cutCells.increment();
        String mark = String.format(
                Locale.ROOT, " … [cut here: %,d characters in all; the CSV file has them]", text.length());
        int end = Math.max(0, maxChars - mark.length());
        if (end > 0 && Character.isHighSurrogate(text.charAt(end - 1))) {
            end--;
        }
        return text.substring(0, end) + mark.substring(0, Math.min(mark.length(), maxChars));
    }
}
