package org.steelyard.model.policy;

import org.steelyard.model.unit.Require;

/**
 * When the chance of being outside a limit counts.
 *
 * @param percent a flight that is inside on paper, but more likely outside than this many per cent, is worth a look
 * @param decides whether it is then marginal; otherwise the distance to the limit decides that, and the chance is told
 */
public record ChanceRule(double percent, boolean decides) {

    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is not between 0 and 100
     */
    public ChanceRule {
        Require.notNegative("percent", percent);
        Require.that(percent <= 100, "a chance is at most 100 %, not " + percent);
    }

    /**
     * The chance that counts.
     *
     * @return as a number from 0 to 1
     */
    public double chance() {
        return percent / 100;
    }
}
