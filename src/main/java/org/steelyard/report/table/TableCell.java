package org.steelyard.report.table;

import java.time.LocalDate;
import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.check.result.Status;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.text.NumberText;

/**
 * A cell of a table: its value and how people see it.
 *
 * @param shown what is read on pages and on the terminal
 * @param number the value at full precision, where the cell is a number; a trim as its unit numbers it
 * @param format how a spreadsheet shows the number, as it writes number formats; blank for text
 * @param emphasis what the cell says besides
 */
public record TableCell(String shown, OptionalDouble number, String format, CellEmphasis emphasis) {

    /** Shown for a number that does not exist, as the sd of one flight. */
    public static final String NONE = "–";

    private static final String WHOLE = "#,##0";
    private static final String SHARE = "0.0%";

    public TableCell {
        Objects.requireNonNull(shown);
        Objects.requireNonNull(number);
        if (number.isPresent() == format.isBlank()) {
            throw new IllegalArgumentException("a number has a format, and nothing else has one: " + shown);
        }
    }

    public static TableCell text(String text) {
        return new TableCell(text, OptionalDouble.empty(), "", CellEmphasis.NONE);
    }

    public static TableCell date(LocalDate date) {
        return text(date.toString());
    }

    public static TableCell severity(Severity severity) {
        return text(severity.label()).with(CellEmphasis.of(severity));
    }

    public static TableCell status(Status status) {
        return text(status.label()).with(CellEmphasis.of(status));
    }

    /** A number that does not exist. */
    public static TableCell missing() {
        return text(NONE);
    }

    public static TableCell count(long number) {
        return number(Counted.number(number), (double) number, WHOLE);
    }

    /** A part of a whole; of nothing it is 0. */
    public static TableCell share(long part, long whole) {
        return number(NumberText.share(part, whole), whole == 0 ? 0 : (double) part / whole, SHARE);
    }

    /** A part of a whole, from 0 to 1, or below 0 where it takes away from it. */
    public static TableCell share(double share) {
        return number(NumberText.fixed(100 * share, 1) + " %", share, SHARE);
    }

    /** A number with so many decimals. */
    public static TableCell number(double number, int decimals) {
        return number(NumberText.fixed(number, decimals), number, WHOLE + decimals(decimals));
    }

    public static TableCell number(OptionalDouble number, int decimals) {
        return number.isPresent() ? number(number.getAsDouble(), decimals) : missing();
    }

    /** How likely something is by chance alone, from 0 to 1. */
    public static TableCell chance(double chance) {
        return number(NumberText.chance(chance), chance, "[<0.001]\"< 0.001\";0.000");
    }

    /** A difference, which always has its sign. */
    public static TableCell signed(double number, int decimals) {
        String shown = NumberText.fixed(number, decimals);
        boolean zero = shown.chars().noneMatch(c -> c >= '1' && c <= '9');
        String digits = "0" + decimals(decimals);
        return number(number > 0 && !zero ? "+" + shown : shown, number, "+" + digits + ";-" + digits + ";" + digits);
    }

    /**
     * A trim as people of its type say it.
     *
     * @param trimUnits nose-up positive
     * @param decimals so finely, whatever the step of the indicator
     */
    public static TableCell trim(double trimUnits, int decimals, TrimUnit unit) {
        String digits = "0" + decimals(decimals) + (unit.symbol().isBlank() ? "" : "\"" + unit.symbol() + "\"");
        boolean plain = unit.numbering().isPlain();
        return number(
                FindingText.trim(trimUnits, Math.pow(10, -decimals), unit),
                plain ? unit.numbering().turned(trimUnits) : trimUnits,
                plain ? digits : digits + "\" UP\";" + digits + "\" DN\";" + digits);
    }

    private static TableCell number(String shown, double number, String format) {
        return new TableCell(shown, OptionalDouble.of(number), format, CellEmphasis.NONE);
    }

    private static String decimals(int count) {
        return count == 0 ? "" : "." + "0".repeat(count);
    }

    public boolean isMissing() {
        return shown.equals(NONE) && number.isEmpty();
    }

    public TableCell with(CellEmphasis other) {
        return new TableCell(shown, number, format, other);
    }
}
