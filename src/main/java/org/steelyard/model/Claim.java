package org.steelyard.model;

import java.util.Objects;

/** What a student entered for one figure. */
public sealed interface Claim permits Claim.Figure, Claim.Words, Claim.Unreadable {

    /**
     * What stands on the sheet.
     *
     * @return figure and unit as entered
     */
    String shown();

    /**
     * A number.
     *
     * @param value mass in kg; CG in the measure's own unit (% MAC, m, index); trim in units, nose-up positive
     * @param halfStep half of the last place that is written, in the unit of the value: how far rounding reaches
     * @param measure in what a CG is given; % MAC for what is none
     * @param shown figure and unit as entered
     */
    record Figure(double value, double halfStep, CgMeasure measure, String shown) implements Claim {

        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if one is not finite or the half step is negative
         */
        public Figure {
            Require.finite("claimed value", value);
            Require.notNegative("half step", halfStep);
            Objects.requireNonNull(measure);
            Objects.requireNonNull(shown);
        }
    }

    /**
     * A limit or a verdict in words.
     *
     * @param shown as entered
     */
    record Words(String shown) implements Claim {

        /** Checks the words. */
        public Words {
            Require.text("claimed words", shown);
        }
    }

    /**
     * Something that is no figure.
     *
     * @param shown as entered
     * @param expected what would be accepted
     */
    record Unreadable(String shown, String expected) implements Claim {

        /** Checks the text. */
        public Unreadable {
            Require.text("claimed text", shown);
            Require.text("expected", expected);
        }
    }
}
