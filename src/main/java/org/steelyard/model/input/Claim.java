package org.steelyard.model.input;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.unit.Require;

/** What a student entered for one figure. */
public sealed interface Claim permits Claim.Figure, Claim.Ambiguous, Claim.Words, Claim.Unreadable {

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
     * A number whose one sign stands before three digits: {@code 41.426} is 41,426 or a little over 41.
     *
     * @param shown figure and unit as entered
     * @param grouped what it is if the sign stands between groups of three digits
     * @param decimal what it is if the sign is the decimal sign
     * @param isDecimal whether the sign stands for decimals in other figures of the kind on the same sheet; empty if
     *     they do not tell
     */
    record Ambiguous(String shown, Figure grouped, Figure decimal, Optional<Boolean> isDecimal) implements Claim {

        public Ambiguous {
            Require.text("claimed text", shown);
            Objects.requireNonNull(grouped);
            Objects.requireNonNull(decimal);
            Objects.requireNonNull(isDecimal);
        }
    }

    /**
     * A limit or a verdict in words.
     *
     * @param shown as entered
     */
    record Words(String shown) implements Claim {

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

        public Unreadable {
            Require.text("claimed text", shown);
            Require.text("expected", expected);
        }
    }
}
