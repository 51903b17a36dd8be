package org.steelyard.analyse;

import org.steelyard.model.Finding;
import org.steelyard.model.FindingCode;
import org.steelyard.model.Policy;

/**
 * How far outside a limit a breach lies, as a multiple of what the policy calls close to that kind of limit, so that
 * kinds compare: a CG by its distance in % MAC, a mass and a load by their percentage of the limit, a trim by its
 * distance in units, seats by the persons too many. Our own measure.
 *
 * <p>Where the policy calls nothing close (a distance of zero), 1 % MAC, 1 % of the limit or 1 unit takes its place; a
 * percentage of a limit of zero is taken as one unit of the quantity. A breach without numbers has no excess.
 */
final class Excess {

    private Excess() {}

    /**
     * How far outside.
     *
     * @return zero for a finding inside its limit or without numbers
     */
    static double of(Finding finding, Policy policy) {
        double beyond = -finding.margin();
        return beyond > 0 ? beyond / distance(finding, policy) : 0;
    }

    private static double distance(Finding finding, Policy policy) {
        return switch (finding.quantity()) {
            case CG -> orOne(policy.marginalCgPercentMac());
            case TRIM, TRIM_DEGREES -> orOne(policy.marginalTrimUnits());
            case MASS ->
                percentOf(
                        finding.limit(),
                        isMassOfState(finding.code()) ? policy.marginalMassPercent() : policy.marginalLoadPercent());
            case RUNNING_LOAD, AREA_LOAD -> percentOf(finding.limit(), policy.marginalLoadPercent());
            case COUNT, PERSONS, NONE -> 1;
        };
    }

    private static boolean isMassOfState(FindingCode code) {
        return code == FindingCode.MASS_HIGH || code == FindingCode.MASS_LOW || code == FindingCode.MASS_OFF_ENVELOPE;
    }

    private static double percentOf(double limit, double percent) {
        return orOne(Math.abs(limit) * orOne(percent) / 100);
    }

    private static double orOne(double distance) {
        return distance > 0 ? distance : 1;
    }
}
