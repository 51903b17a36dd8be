package org.steelyard.check;

import java.util.Objects;
import org.steelyard.model.FindingCode;
import org.steelyard.model.Phase;

/**
 * The chance that the true value is outside one limit.
 *
 * @param code which limit: {@link FindingCode#CG_FORWARD}, {@link FindingCode#CG_AFT}, {@link FindingCode#MASS_HIGH} or
 *     {@link FindingCode#MASS_LOW}
 * @param phase of which state
 * @param inside whether the computed value is inside
 * @param chance from 0 to 1
 */
public record LimitChance(FindingCode code, Phase phase, boolean inside, double chance) {

    /** Checks that nothing is missing. */
    public LimitChance {
        Objects.requireNonNull(code);
        Objects.requireNonNull(phase);
    }
}
