package org.steelyard.model.limit;

import org.steelyard.model.unit.Require;
import org.steelyard.model.unit.Tolerance;

/**
 * A range of the centre of gravity in % MAC, ends included.
 *
 * @param fromPercentMac forward end
 * @param toPercentMac aft end, not ahead of the forward one
 */
public record CgRange(double fromPercentMac, double toPercentMac) {

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException if the ends are exchanged or not finite
     */
    public CgRange {
        Require.finite("fromPercentMac", fromPercentMac);
        Require.finite("toPercentMac", toPercentMac);
        Require.that(fromPercentMac <= toPercentMac, "a CG range runs aft");
    }

    /**
     * Whether a CG lies in the range.
     *
     * @param cgPercentMac CG in % MAC
     * @return true inside and on either end
     */
    public boolean contains(double cgPercentMac) {
        return !Tolerance.isAhead(cgPercentMac, fromPercentMac) && !Tolerance.isAft(cgPercentMac, toPercentMac);
    }

    /**
     * The place in the range that is nearest to a CG.
     *
     * @param cgPercentMac CG in % MAC
     * @return the CG itself within the range, else the end that is nearer
     */
    public double nearestPercentMac(double cgPercentMac) {
        return Math.min(Math.max(cgPercentMac, fromPercentMac), toPercentMac);
    }
}
