package org.steelyard.read.table.xlsx;

import java.time.LocalDateTime;
import java.util.List;
import org.apache.poi.ss.usermodel.DateUtil;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.text.NumberGrammar;

/** From what a workbook stores in a cell to text and kind (ECMA-376, part 1, clauses 18.3.1.4 and 18.18.11). */
public final class XlsxCells {

    private static final int EXACT_DIGITS = 15;
    private static final double LARGEST_WHOLE = 1e15;

    private final List<String> texts;
    private final XlsxStyles styles;
    private final boolean date1904;

    XlsxCells(List<String> texts, XlsxStyles styles, boolean date1904) {
        this.texts = texts;
        this.styles = styles;
        this.date1904 = date1904;
    }

    /** A decoded cell. */
    record Cell(String text, CellKind kind) {

        static final Cell BLANK = new Cell("", CellKind.TEXT);
    }

    /**
     * Decodes a stored value.
     *
     * @param type the cell's type; blank for a number
     * @param style the cell's style, -1 for none
     * @param value the stored value
     */
    Cell decode(String type, int style, String value) {
        return switch (type) {
            case "s" -> new Cell(texts.get(wholeNumber(value)), CellKind.TEXT);
            case "str", "inlineStr" -> new Cell(value, CellKind.TEXT);
            case "b" -> new Cell(XlsxWorkbook.isTrue(value) ? "TRUE" : "FALSE", CellKind.TEXT);
            case "e" -> new Cell(value, CellKind.ERROR);
            case "d" -> new Cell(value, CellKind.DATE);
            default -> value.isEmpty() ? Cell.BLANK : number(value, style);
        };
    }

    private Cell number(String value, int style) {
        double number = NumberGrammar.parse(value, '.', true);
        if (Double.isNaN(number)) {
            return new Cell(value, CellKind.TEXT);
        }
        return styles.isDate(style) && DateUtil.isValidExcelDate(number) && number < LARGEST_WHOLE
                ? date(number)
                : new Cell(shortest(value, number), styles.isPercentage(style) ? CellKind.PERCENTAGE : CellKind.NUMBER);
    }

    private Cell date(double serial) {
        LocalDateTime time = DateUtil.getLocalDateTime(serial, date1904, true);
        if (serial < 1 && !date1904) {
            return new Cell(time.toLocalTime().toString(), CellKind.TEXT);
        }
        boolean midnight = time.toLocalTime().toSecondOfDay() == 0;
        return new Cell(midnight ? time.toLocalDate().toString() : time.toString(), CellKind.DATE);
    }

    /** The shortest text that reads back as the same double; whole numbers without a decimal point. */
    static String shortest(String stored, double number) {
        if (Double.isInfinite(number) || isShortest(stored)) {
            return stored;
        }
        return number == Math.rint(number) && Math.abs(number) < LARGEST_WHOLE
                ? Long.toString((long) number)
                : Double.toString(number);
    }

    /** Whether a text of at most 15 digits has nothing to leave out; no shorter one can then mean the same double. */
    private static boolean isShortest(String stored) {
        int start = stored.charAt(0) == '-' ? 1 : 0;
        int point = stored.indexOf('.');
        boolean leadingZero = stored.charAt(start) == '0' && stored.length() > start + 1 && point != start + 1;
        boolean trailingZero = point >= 0 && stored.endsWith("0");
        return stored.length() - start <= EXACT_DIGITS
                && !leadingZero
                && !trailingZero
                && stored.charAt(0) != '+'
                && stored.indexOf('E') < 0
                && stored.indexOf('e') < 0
                && !stored.equals("-0");
    }

    /** A number made of digits alone, as indexes and positions are; -1 if it is none or too large. */
    public static int wholeNumber(String text) {
        int value = 0;
        for (int i = 0; i < text.length(); i++) {
            int digit = text.charAt(i) - '0';
            if (digit < 0 || digit > 9 || value > (Integer.MAX_VALUE - digit) / 10) {
                return -1;
            }
            value = value * 10 + digit;
        }
        return text.isEmpty() ? -1 : value;
    }
}
