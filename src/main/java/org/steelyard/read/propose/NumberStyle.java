package org.steelyard.read.propose;

import java.util.Collection;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steelyard.model.input.DigitGrouping;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.text.Grouping;
import org.steelyard.read.text.NumberGrammar;
import org.steelyard.read.text.WrittenCell;

/**
 * How a source writes its numbers, as far as its cells tell: {@code 1,25} and {@code 1.250,5} are decimal commas,
 * {@code 1,250.5} a decimal point, and {@code 1,250} alone may be either.
 *
 * @param decimalComma whether decimals follow a comma
 * @param grouping what stands between groups of three digits
 * @param sure whether the cells leave no other reading
 * @param why what it rests on, in words
 */
public record NumberStyle(boolean decimalComma, DigitGrouping grouping, boolean sure, String why) {

    /** Sign, whole part with what groups it (2), decimal sign (3) and decimals (4). */
    public static final Pattern NUMBER = Pattern.compile(
            "[-+]?(\\d{1,3}(?:([.,' \\u00A0\\u2009\\u202F\\u2019])\\d{3})(?:\\2\\d{3})*|\\d+)(?:([.,])(\\d+))?");

    static NumberStyle of(Collection<ColumnCells> columns, Optional<Boolean> decided) {
        Tally tally = new Tally();
        for (ColumnCells column : columns) {
            column.each((cell, times) -> {
                if (cell.kind() == CellKind.TEXT) {
                    tally.add(WrittenCell.of(cell.text()).number(), times);
                }
            });
        }
        return tally.style(decided);
    }

    /** Reads a number in this way, or as a workbook stores it; NaN if it is none. */
    double number(String text, CellKind kind) {
        if (kind.isNumber()) {
            return NumberGrammar.parse(text, '.', true);
        }
        char decimal = decimalComma ? ',' : '.';
        return kind == CellKind.DATE
                ? Double.NaN
                : NumberGrammar.parse(Grouping.without(text, decimal, grouping), decimal, false);
    }

    /** Cells of one kind: how many, and the first of them. */
    private static final class Votes {

        private String first = "";
        private int count;

        void add(String text, int times) {
            first = count == 0 ? text : first;
            count += times;
        }

        boolean any() {
            return count > 0;
        }
    }

    private static final class Tally {

        /** A sign that stands in fewer of the cells than this part is a slip. */
        private static final double SLIPS = 0.1;

        private final Votes comma = new Votes();
        private final Votes point = new Votes();
        private final Votes either = new Votes();
        private final Votes grouped = new Votes();
        private DigitGrouping blanks = DigitGrouping.NONE;

        void add(String text, int times) {
            Matcher parts = NUMBER.matcher(text);
            if (!parts.matches()) {
                return;
            }
            String group = parts.group(2) == null ? "" : parts.group(2);
            String decimal = parts.group(3) == null ? "" : parts.group(3);
            boolean mark = group.equals(",") || group.equals(".");
            if (!group.isEmpty() && !mark) {
                boolean apostrophe = DigitGrouping.APOSTROPHE.isSign(group.charAt(0));
                blanks = apostrophe ? DigitGrouping.APOSTROPHE : DigitGrouping.BLANK;
            }
            if (!decimal.isEmpty()) {
                decimal(decimal).add(text, times);
                if (mark) {
                    grouped.add(text, times);
                }
            } else if (mark) {
                group(group, text, times);
            }
        }

        private Votes decimal(String sign) {
            return sign.equals(",") ? comma : point;
        }

        /** One sign before three digits may be either; several can only be between groups. */
        private void group(String sign, String text, int times) {
            if (text.indexOf(sign) == text.lastIndexOf(sign)) {
                either.add(text, times);
            } else {
                decimal(sign.equals(",") ? "." : ",").add(text, times);
                grouped.add(text, times);
            }
        }

        NumberStyle style(Optional<Boolean> decided) {
            int more = Math.max(comma.count, point.count);
            int fewer = Math.min(comma.count, point.count);
            boolean contradict = fewer > SLIPS * more;
            boolean unclear = either.any() && more == 0;
            boolean isComma = decided.orElse(comma.count > point.count);
            boolean sure = decided.isPresent() || !(contradict || unclear);
            return new NumberStyle(isComma, grouping(isComma, fewer > 0), sure, why(contradict, unclear, isComma));
        }

        /** Where a sign stands both for decimals and, perhaps, between groups, no grouping is declared. */
        private DigitGrouping grouping(boolean isComma, boolean slips) {
            DigitGrouping mark = isComma ? DigitGrouping.POINT : DigitGrouping.COMMA;
            boolean alone = either.any()
                    && !slips
                    && mark.isSign(either.first.replaceAll("[-+\\d]", "").charAt(0));
            return (grouped.any() && !slips) || alone ? mark : blanks;
        }

        private String why(boolean contradict, boolean unclear, boolean isComma) {
            if (contradict) {
                return "'" + comma.first + "' and '" + point.first + "' are written in two ways";
            }
            if (unclear) {
                return "'" + either.first + "' may have a decimal sign or a group of three digits";
            }
            Votes with = isComma ? comma : point;
            Votes against = isComma ? point : comma;
            String slips = against.any() ? "; not so in " + against.count + ": '" + against.first + "'" : "";
            return with.any() ? "decimal " + (isComma ? "comma" : "point") + " as in '" + with.first + "'" + slips : "";
        }
    }
}
