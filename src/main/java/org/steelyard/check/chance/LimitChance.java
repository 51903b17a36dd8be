package org.steelyard.check.chance;

import java.util.Objects;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;

/**
 * The chance that the true value is outside one limit.
 *
 * @param code which limit: {@link FindingCode#CG_FORWARD}, {@link FindingCode#CG_AFT}, {@link FindingCode#MASS_HIGH} or
 *     {@link FindingCode#MASS_LOW}
 * @param phase of which state
 * @param inside whether the computed value is inside
 * @param roomSds room to the limit in standard deviations of the distance, negative outside; infinite where nothing
 *     varies
 * @param chance from 0 to 1; 0 where the limit is more than eight standard deviations off
 */
public record LimitChance(FindingCode code, Phase phase, boolean inside, double roomSds, double chance) {

    public LimitChance {
        Objects.requireNonNull(code);
        Objects.requireNonNull(phase);
    }

    /** Whether this limit is more likely broken than another; of chances that are both as good as none, the nearer. */
    boolean isMoreThan(LimitChance other) {
        int byChance = Double.compare(chance, other.chance);
        return byChance > 0 || (byChance == 0 && roomSds < other.roomSds);
    }
}
