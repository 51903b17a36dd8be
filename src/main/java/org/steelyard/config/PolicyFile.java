package org.steelyard.config;

import java.util.List;
import java.util.Optional;
import org.steelyard.model.DuplicateRule;
import org.steelyard.model.LastMinuteRule;
import org.steelyard.model.Policy;
import org.steelyard.model.RecordedTrimRule;
import org.steelyard.model.SharingRule;

/** Reads {@code policy.yaml}: the operator's rules. */
final class PolicyFile {

    private PolicyFile() {}

    static Optional<Policy> read(Keys keys) {
        Optional<Policy> marginal = keys.part("marginal", PolicyFile::marginal);
        Optional<RecordedTrimRule> recordedTrim = keys.partIfAny("recorded-trim", PolicyFile::recordedTrim);
        Optional<LastMinuteRule> lastMinute = keys.partIfAny("last-minute", PolicyFile::lastMinute);
        SharingRule sharing = keys.read(
                "sharing", Words.choice(SharingRule::label, List.of(SharingRule.values())), SharingRule.BY_CAPACITY);
        DuplicateRule duplicates = keys.find(
                        "duplicates", Words.choice(DuplicateRule::label, List.of(DuplicateRule.values())))
                .orElse(DuplicateRule.FIRST);
        return keys.make(() -> {
            Policy found = marginal.orElseThrow();
            return new Policy(
                    found.marginalCgPercentMac(),
                    found.marginalMassPercent(),
                    found.marginalLoadPercent(),
                    found.marginalTrimUnits(),
                    sharing,
                    recordedTrim,
                    lastMinute,
                    duplicates);
        });
    }

    private static Optional<Policy> marginal(Keys keys) {
        double cgPercentMac = keys.number("cg", Measure.PERCENT_MAC);
        double massPercent = keys.number("mass", Measure.PERCENT);
        double loadPercent = keys.number("load", Measure.PERCENT);
        double trimUnits = keys.number("trim", Measure.TRIM);
        return keys.make(() -> new Policy(cgPercentMac, massPercent, loadPercent, trimUnits, SharingRule.BY_CAPACITY));
    }

    private static Optional<LastMinuteRule> lastMinute(Keys keys) {
        int passengers = keys.count("passengers", 0);
        double massKg = keys.number("mass", Measure.MASS_OR_NONE);
        double fuelKg = keys.number("fuel", Measure.MASS_OR_NONE);
        return keys.make(() -> new LastMinuteRule(passengers, massKg, fuelKg));
    }

    private static Optional<RecordedTrimRule> recordedTrim(Keys keys) {
        double marginalUnits = keys.number("marginal", Measure.TRIM);
        double breachUnits = keys.number("breach", Measure.TRIM);
        String groupBy = keys.find("by", Keys::notBlank).orElse("");
        return keys.make(() -> new RecordedTrimRule(marginalUnits, breachUnits, groupBy));
    }
}
