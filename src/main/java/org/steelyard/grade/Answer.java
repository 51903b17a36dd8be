package org.steelyard.grade;

import java.util.Objects;
import org.steelyard.check.LimitingMass;

/** The answer to one item of a load sheet. */
public sealed interface Answer permits Answer.Figure, Answer.Limit, Answer.Verdict {

    /**
     * A figure.
     *
     * @param value kg, % MAC, m, index or trim units (nose-up positive)
     * @param step smallest step in which it can be set: of a trim indicator; 0 for all else
     */
    record Figure(double value, double step) implements Answer {}

    /**
     * A limit.
     *
     * @param limit which
     */
    record Limit(LimitingMass limit) implements Answer {

        /** Checks that it is there. */
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
