package org.steelyard.model.policy;

import java.util.Objects;
import org.steelyard.model.unit.Require;

/**
 * How recorded trim settings are held against the right ones.
 *
 * @param marginalUnits a setting farther off than this many units is marginal
 * @param breachUnits a setting farther off than this many units is a breach; not less than the marginal distance
 * @param groupBy heading of a carried column, as the pilot's name, by which differences are summed up beside the tail;
 *     blank for none
 */
public record RecordedTrimRule(double marginalUnits, double breachUnits, String groupBy) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative or they are exchanged
     */
    public RecordedTrimRule {
        Require.notNegative("marginalUnits", marginalUnits);
        Require.notNegative("breachUnits", breachUnits);
        Require.that(
                marginalUnits <= breachUnits,
                "a recorded trim becomes marginal before it becomes a breach: marginal " + marginalUnits + ", breach "
                        + breachUnits);
        Objects.requireNonNull(groupBy);
    }
}
