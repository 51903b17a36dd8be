package org.steelyard.model.policy;

import java.util.Objects;
import java.util.Optional;
import org.steelyard.model.unit.Require;

/**
 * The operator's rules: how close to a limit is marginal, and how totals are shared out.
 *
 * @param marginalCgPercentMac a CG nearer to a limit line than this many % MAC is marginal
 * @param marginalMassPercent a mass within this percentage of a mass limit is marginal
 * @param marginalLoadPercent a hold, floor or group within this percentage of its limit is marginal
 * @param marginalTrimUnits a trim nearer to an end of its band than this many units is marginal
 * @param sharing rule for totals
 * @param recordedTrim how recorded trim settings are held against the right ones; empty where they are not
 * @param lastMinute how much may change at the last minute; empty where nothing is found of it
 * @param duplicates which row stands where several are of one flight
 * @param chance when the chance of being outside counts; empty where it is not looked at
 * @param spread how much what is aboard varies; empty where no chance is computed
 * @param remedyReservePercentMac how far inside the envelopes a remedy must bring a flight, in % MAC
 * @param remedyFuelReservePercent what a remedy with less fuel must leave on landing, in % of the capacity of all tanks
 */
public record Policy(
        double marginalCgPercentMac,
        double marginalMassPercent,
        double marginalLoadPercent,
        double marginalTrimUnits,
        SharingRule sharing,
        Optional<RecordedTrimRule> recordedTrim,
        Optional<LastMinuteRule> lastMinute,
        DuplicateRule duplicates,
        Optional<ChanceRule> chance,
        Optional<SpreadRule> spread,
        double remedyReservePercentMac,
        double remedyFuelReservePercent) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative, or a chance is to count without a spread to compute it from
     */
    public Policy {
        Require.notNegative("marginalCgPercentMac", marginalCgPercentMac);
        Require.notNegative("marginalMassPercent", marginalMassPercent);
        Require.notNegative("marginalLoadPercent", marginalLoadPercent);
        Require.notNegative("marginalTrimUnits", marginalTrimUnits);
        Objects.requireNonNull(sharing);
        Objects.requireNonNull(recordedTrim);
        Objects.requireNonNull(lastMinute);
        Objects.requireNonNull(duplicates);
        Objects.requireNonNull(spread);
        Require.that(
                chance.isEmpty() || spread.isPresent(), "a chance of being outside needs the spread of what is aboard");
        Require.notNegative("remedyReservePercentMac", remedyReservePercentMac);
        Require.notNegative("remedyFuelReservePercent", remedyFuelReservePercent);
    }
}
