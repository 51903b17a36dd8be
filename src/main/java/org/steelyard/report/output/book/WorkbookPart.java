package org.steelyard.report.output.book;

import java.util.Locale;

/**
 * How much of a season a workbook lists row by row.
 *
 * @param listed the first so many flights
 * @param flights all flights of the season
 * @param rejected all rejected rows of the season
 * @param rejectedListed the first so many of them
 */
public record WorkbookPart(long listed, long flights, long rejectedListed, long rejected) {

    /** What the sheets of flights and findings say of it; blank if they list all. */
    public String flightsNote() {
        return listed >= flights
                ? ""
                : String.format(
                        Locale.ROOT,
                        "Of the first %,d of %,d flights only; flights.parquet and findings.parquet hold all.",
                        listed,
                        flights);
    }

    /** What the sheet of rejected rows says of it; blank if it lists all. */
    public String rejectedNote() {
        return rejectedListed >= rejected
                ? ""
                : String.format(
                        Locale.ROOT,
                        "The first %,d of %,d rejected rows only; the folder rejected holds all.",
                        rejectedListed,
                        rejected);
    }
}
