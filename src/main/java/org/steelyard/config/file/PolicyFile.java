package org.steelyard.config.file;

import java.util.List;
import java.util.Optional;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.Words;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.DuplicateRule;
import org.steelyard.model.policy.LastMinuteRule;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.policy.SeatingRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.policy.SpreadRule;

/** Reads {@code policy.yaml}: the operator's rules. */
public final class PolicyFile {

    /** What a remedy keeps of CG and of fuel. */
    private record RemedyReserves(double percentMac, double fuelPercent) {}

    private PolicyFile() {}

    public static Optional<Policy> read(Keys keys) {
        Optional<Policy> marginal = keys.part("marginal", PolicyFile::marginal);
        Optional<RecordedTrimRule> recordedTrim = keys.partIfAny("recorded-trim", PolicyFile::recordedTrim);
        Optional<LastMinuteRule> lastMinute = keys.partIfAny("last-minute", PolicyFile::lastMinute);
        Optional<SpreadRule> spread = keys.partIfAny("spread", PolicyFile::spread);
        Optional<ChanceRule> chance = keys.partIfAny("chance", PolicyFile::chance);
        RemedyReserves reserves = keys.partIfAny("remedy", PolicyFile::remedy).orElse(new RemedyReserves(0, 0));
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
                    duplicates,
                    chance,
                    spread,
                    reserves.percentMac(),
                    reserves.fuelPercent());
        });
    }

    private static Optional<Policy> marginal(Keys keys) {
        double cgPercentMac = keys.number("cg", WrittenNumber.PERCENT_MAC);
        double massPercent = keys.number("mass", WrittenNumber.PERCENT);
        double loadPercent = keys.number("load", WrittenNumber.PERCENT);
        double trimUnits = keys.number("trim", WrittenNumber.TRIM);
        return keys.make(() -> new Policy(
                cgPercentMac,
                massPercent,
                loadPercent,
                trimUnits,
                SharingRule.BY_CAPACITY,
                Optional.empty(),
                Optional.empty(),
                DuplicateRule.FIRST,
                Optional.empty(),
                Optional.empty(),
                0,
                0));
    }

    private static Optional<LastMinuteRule> lastMinute(Keys keys) {
        int passengers = keys.count("passengers", 0);
        double massKg = keys.number("mass", WrittenNumber.MASS_OR_NONE);
        double fuelKg = keys.number("fuel", WrittenNumber.MASS_OR_NONE);
        return keys.make(() -> new LastMinuteRule(passengers, massKg, fuelKg));
    }

    private static Optional<RecordedTrimRule> recordedTrim(Keys keys) {
        double marginalUnits = keys.number("marginal", WrittenNumber.TRIM);
        double breachUnits = keys.number("breach", WrittenNumber.TRIM);
        String groupBy = keys.find("by", Keys::notBlank).orElse("");
        return keys.make(() -> new RecordedTrimRule(marginalUnits, breachUnits, groupBy));
    }

    private static Optional<ChanceRule> chance(Keys keys) {
        double percent = keys.number("worth-a-look", WrittenNumber.PERCENT);
        boolean decides = keys.find("decides", Words::yes).orElse(false);
        return keys.make(() -> new ChanceRule(percent, decides));
    }

    private static Optional<RemedyReserves> remedy(Keys keys) {
        double percentMac = keys.number("reserve", WrittenNumber.PERCENT_MAC);
        double fuelPercent = keys.find("fuel-reserve", WrittenNumber.PERCENT).orElse(0.0);
        return keys.make(() -> new RemedyReserves(percentMac, fuelPercent));
    }

    private static Optional<SpreadRule> spread(Keys keys) {
        SeatingRule seating = keys.read(
                "seating", Words.choice(SeatingRule::label, List.of(SeatingRule.values())), SeatingRule.RANDOM);
        double maleKg = keys.number("male", WrittenNumber.MASS_OR_NONE);
        double femaleKg = keys.number("female", WrittenNumber.MASS_OR_NONE);
        double adultKg = keys.number("adult", WrittenNumber.MASS_OR_NONE);
        double childKg = keys.number("child", WrittenNumber.MASS_OR_NONE);
        double bagKg = keys.number("bag", WrittenNumber.MASS_OR_NONE);
        double holdPositionM = keys.number("hold-position", WrittenNumber.LENGTH_OR_NONE);
        double densityPercent = keys.number("fuel-density", WrittenNumber.PERCENT);
        double quantityPercent = keys.number("fuel-quantity", WrittenNumber.PERCENT);
        double basicMassPercent = keys.number("basic-mass", WrittenNumber.PERCENT);
        double basicCgPercentMac = keys.number("basic-cg", WrittenNumber.PERCENT_MAC);
        return keys.make(() -> new SpreadRule(
                seating,
                maleKg,
                femaleKg,
                adultKg,
                childKg,
                bagKg,
                holdPositionM,
                densityPercent,
                quantityPercent,
                basicMassPercent,
                basicCgPercentMac));
    }
}
