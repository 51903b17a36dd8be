package org.steelyard.grade.working;

import java.util.Objects;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.model.trim.TrimScale;

/** The answer to one item of a load sheet. */
public sealed interface Answer permits Answer.Figure, Answer.Limit, Answer.Verdict {

    /**
     * A figure.
     *
     * @param value kg, % MAC, m, index or trim units (nose-up positive)
     * @param step smallest step in which it can be set: of a trim indicator; 0 for all else
     * @param setting what is to be set, in whole steps; the value itself where there is no step
     */
    record Figure(double value, double step, double setting) implements Answer {

        /**
         * A figure that is not set.
         *
         * @param value kg, % MAC, m or index
         */
        public Figure(double value) {
            this(value, 0, value);
        }

        /**
         * A trim.
         *
         * @param scale the scale that it is read from
         * @param units exact trim in units, nose-up positive
         * @return the trim with its setting by the scale's rounding
         */
        public static Figure trim(TrimScale scale, double units) {
            return new Figure(units, scale.stepUnits(), scale.settingFor(units));
        }
    }

    /**
     * A limit.
     *
     * @param limit which
     */
    record Limit(LimitingMass limit) implements Answer {

        public Limit {
            Objects.requireNonNull(limit);
        }
    }

    /**
     * In or out.
     *
     * @param inLimits true if nothing is outside a limit
     */
    record Verdict(boolean inLimits) implements Answer {}
}
