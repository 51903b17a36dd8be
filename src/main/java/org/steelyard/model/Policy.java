package org.steelyard.model;

import java.util.Objects;

/**
 * The operator's rules: how close to a limit is marginal, and how totals are shared out.
 *
 * @param marginalCgPercentMac a CG nearer to a limit line than this many % MAC is marginal
 * @param marginalMassPercent a mass within this percentage of a mass limit is marginal
 * @param marginalLoadPercent a hold, floor or group within this percentage of its limit is marginal
 * @param marginalTrimUnits a trim nearer to an end of its band than this many units is marginal
 * @param sharing rule for totals
 */
public record Policy(
        double marginalCgPercentMac,
        double marginalMassPercent,
        double marginalLoadPercent,
        double marginalTrimUnits,
        SharingRule sharing) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative
     */
    public Policy {
        Require.notNegative("marginalCgPercentMac", marginalCgPercentMac);
        Require.notNegative("marginalMassPercent", marginalMassPercent);
        Require.notNegative("marginalLoadPercent", marginalLoadPercent);
        Require.notNegative("marginalTrimUnits", marginalTrimUnits);
        Objects.requireNonNull(sharing);
    }
}
