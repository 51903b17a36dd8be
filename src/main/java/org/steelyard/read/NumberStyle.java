package org.steelyard.read;

import java.util.Collection;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steelyard.model.DigitGrouping;

/**
 * How a source writes its numbers, as far as its cells tell: {@code 1,25} and {@code 1.250,5} are decimal commas,
 * {@code 1,250.5} a decimal point, and {@code 1,250} alone may be either.
 *
 * @param decimalComma whether decimals follow a comma
 * @param grouping what stands between groups of three digits
 * @param sure whether the cells leave no other reading
 * @param why what it rests on, in words
 */
record NumberStyle(boolean decimalComma, DigitGrouping grouping, boolean sure, String why) {

    private static final Pattern NUMBER =
            Pattern.compile("[-+]?(\\d{1,3}(?:([.,' \\u00A0\\u2009\\u202F\\u2019])\\d{3})(?:\\2\\d{3})*|\\d+)(?:([.,])(\\d+))?");

    static NumberStyle of(Collection<ColumnCells> columns, Optional<Boolean> decided) {
        Tally tally = new Tally();
        for (ColumnCells column : columns) {
            for (ColumnCells.Cell cell : column.distinct()) {
                if (cell.kind() == CellKind.TEXT) {
                    tally.add(WrittenCell.of(cell.text()).number());
                }
            }
        }
        return tally.style(decided);
    }

    /** Reads a number in this way, or as a workbook stores it; NaN if it is none. */
    double number(String text, CellKind kind) {
        if (kind == CellKind.NUMBER) {
            return Numbers.parse(text, '.', true);
        }
        char decimal = decimalComma ? ',' : '.';
        return kind == CellKind.DATE
                ? Double.NaN
                : Numbers.parse(Grouping.without(text, decimal, grouping), decimal, false);
    }

    private static final class Tally {

        private String comma = "";
        private String point = "";
        private String either = "";
        private String bothCommaAndPoint = "";
        private DigitGrouping blanks = DigitGrouping.NONE;

        void add(String text) {
            Matcher parts = NUMBER.matcher(text);
            if (!parts.matches()) {
                return;
            }
            String group = parts.group(2) == null ? "" : parts.group(2);
            String decimal = parts.group(3) == null ? "" : parts.group(3);
            boolean mark = group.equals(",") || group.equals(".");
            if (!group.isEmpty() && !mark) {
                blanks = DigitGrouping.APOSTROPHE.isSign(group.charAt(0))
                        ? DigitGrouping.APOSTROPHE
                        : DigitGrouping.BLANK;
            }
            if (!decimal.isEmpty()) {
                decimal(decimal, text);
                bothCommaAndPoint = mark ? text : bothCommaAndPoint;
            } else if (mark) {
                group(group, text);
            }
        }

        private void decimal(String sign, String text) {
            if (sign.equals(",")) {
                comma = text;
            } else {
                point = text;
            }
        }

        /** One sign before three digits may be either; several can only be between groups. */
        private void group(String sign, String text) {
            if (text.indexOf(sign) != text.lastIndexOf(sign)) {
                decimal(sign.equals(",") ? "." : ",", text);
                bothCommaAndPoint = text;
            } else {
                either = text;
            }
        }

        NumberStyle style(Optional<Boolean> decided) {
            boolean isComma = decided.orElse(!comma.isEmpty() && point.isEmpty());
            boolean contradict = !comma.isEmpty() && !point.isEmpty();
            boolean grouped = !bothCommaAndPoint.isEmpty() || (!either.isEmpty() && isGroup(either, isComma));
            DigitGrouping mark = isComma ? DigitGrouping.POINT : DigitGrouping.COMMA;
            DigitGrouping grouping = grouped ? mark : blanks;
            boolean unclear = !either.isEmpty() && comma.isEmpty() && point.isEmpty();
            boolean sure = decided.isPresent() || !(contradict || unclear);
            return new NumberStyle(isComma, grouping, sure, why(contradict, unclear, isComma));
        }

        private static boolean isGroup(String text, boolean isComma) {
            return text.indexOf(isComma ? '.' : ',') >= 0;
        }

        private String why(boolean contradict, boolean unclear, boolean isComma) {
            if (contradict) {
                return "'" + comma + "' and '" + point + "' are written in two ways";
            }
            if (unclear) {
                return "'" + either + "' may have a decimal sign or a group of three digits";
            }
            if (isComma) {
                return comma.isEmpty() ? "" : "decimal comma as in '" + comma + "'";
            }
            return point.isEmpty() ? "" : "decimal point as in '" + point + "'";
        }
    }
}
