package org.steelyard.analyse.figure;

import java.util.Comparator;
import org.steelyard.model.finding.Finding;

/**
 * How far outside a limit a breach lies: a CG in % MAC, a trim in units, all else as a percentage of the limit. Only
 * figures in one unit compare; in a list those of one unit stand together. Our own measure.
 *
 * @param figure how far; zero inside the limit or without numbers, and so not negative
 * @param unit what the figure is in
 */
public record Excess(double figure, Unit unit) {

    /** What a distance beyond a limit is given in. */
    public enum Unit {
        /** A CG. */
        PERCENT_MAC("% MAC"),
        /** A trim. */
        TRIM_UNITS("units"),
        /** All else. */
        PERCENT_OF_LIMIT("% of the limit");

        private final String symbol;

        Unit(String symbol) {
            this.symbol = symbol;
        }

        /** The unit behind a figure. */
        public String symbol() {
            return symbol;
        }
    }

    /** The farthest of a unit first. */
    public static final Comparator<Excess> FARTHEST_FIRST =
            Comparator.comparing(Excess::unit).thenComparing(Excess::figure, Comparator.reverseOrder());

    /** A percentage of a limit of zero is taken as one of 1. */
    public static Excess of(Finding finding) {
        double beyond = Math.max(0, -finding.margin());
        return switch (finding.quantity()) {
            case CG -> new Excess(beyond, Unit.PERCENT_MAC);
            case TRIM, TRIM_DEGREES -> new Excess(beyond, Unit.TRIM_UNITS);
            case MASS, RUNNING_LOAD, AREA_LOAD, COUNT, PERSONS, NONE ->
                new Excess(100 * beyond / orOne(Math.abs(finding.limit())), Unit.PERCENT_OF_LIMIT);
        };
    }

    private static double orOne(double limit) {
        return limit > 0 ? limit : 1;
    }
}
