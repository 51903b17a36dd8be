package org.steelyard.demo;

import java.time.LocalDate;

/** What stands in a cell. */
sealed interface Cell permits Cell.Text, Cell.Amount, Cell.Day, Cell.Failed, Cell.Uncalculated {

    /** Any text, also one that ought to be something else. */
    record Text(String text) implements Cell {}

    /** A number with so many decimals, in the unit of its column. */
    record Amount(double value, int decimals) implements Cell {}

    /** A date. */
    record Day(LocalDate date) implements Cell {}

    /** An error of a workbook. */
    record Failed() implements Cell {}

    /** A formula of a workbook that was never calculated. */
    record Uncalculated(String formula) implements Cell {}

    static Cell count(long count) {
        return new Amount(count, 0);
    }
}
