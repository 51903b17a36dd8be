package org.steelyard.check.result;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Draws;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;
import org.steelyard.trim.SettingRange;

/** Trims in whole steps of an indicator, held to decimal arithmetic. */
class RoundedSettingTest {

    private static final EdgeTable EDGES = new EdgeTable(RoundedSettingTest.class);
    private static final Policy STRICT = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    @AfterAll
    static void write() {
        EDGES.write();
    }

    /** From 10 UP at 15 % MAC to 10 DN at 35 % MAC: trim is 25 less the CG. */
    private static TrimScale scale(SettingRounding rounding, String step, String low, String high) {
        return new TrimScale(
                Phase.TAKEOFF,
                "5",
                "",
                TrimUnit.UNITS,
                new TrimPoints(List.of(new TrimPoint(15, 10), new TrimPoint(35, -10))),
                Double.parseDouble(step),
                Double.parseDouble(low),
                Double.parseDouble(high),
                rounding,
                TrimBasis.DOCUMENT);
    }

    private static BigDecimal rounded(SettingRounding rounding, BigDecimal trim, BigDecimal step) {
        BigDecimal half = new BigDecimal("0.5");
        BigDecimal steps = trim.divide(step, 12, RoundingMode.HALF_EVEN);
        BigDecimal whole = switch (rounding) {
            case NEAREST_HALFWAY_UP -> steps.add(half).setScale(0, RoundingMode.FLOOR);
            case NEAREST_HALFWAY_DOWN -> steps.subtract(half).setScale(0, RoundingMode.CEILING);
            case NOSE_UP -> steps.setScale(0, RoundingMode.CEILING);
            case NOSE_DOWN -> steps.setScale(0, RoundingMode.FLOOR);
        };
        return whole.multiply(step);
    }

    /** Every trim on a half of a step, with the errors of doubles that an interpolation leaves. */
    @ParameterizedTest
    @EnumSource(SettingRounding.class)
    void halvesAndWholesOfAStepAreRoundedAsDecimals(SettingRounding rounding) {
        for (String step : List.of("0.1", "0.2", "0.25", "0.05", "0.5", "0.3", "1")) {
            TrimScale scale = scale(rounding, step, "-9", "9");
            BigDecimal half = new BigDecimal(step).divide(BigDecimal.valueOf(2));
            for (BigDecimal trim = new BigDecimal("-4"); trim.doubleValue() < 4; trim = trim.add(half)) {
                double exact =
                        scale.law().trimUnitsAt(25 - trim.doubleValue(), 50_000).orElseThrow();
                assertThat(scale.settingFor(exact))
                        .as("%s in steps of %s, %s", trim, step, rounding)
                        .isCloseTo(rounded(rounding, trim, new BigDecimal(step)).doubleValue(), within(1e-9));
            }
        }
    }

    @ParameterizedTest
    @EnumSource(SettingRounding.class)
    void whatIsInTheBandIsNeverRoundedOutOfIt(SettingRounding rounding) {
        long seed = 1807;
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < Draws.of(1000); i++) {
            double low = -random.nextInt(1, 400) / 100.0;
            double high = random.nextInt(1, 400) / 100.0;
            TrimScale scale = scale(rounding, "0.25", Double.toString(low), Double.toString(high));
            double trim = i % 3 == 0 ? low : i % 3 == 1 ? high : random.nextDouble(low, high);
            double setting = scale.settingFor(trim);
            assertThat(setting).as("seed %d, draw %d", seed, i).isBetween(low - 1e-9, high + 1e-9);
            CgRange right = SettingRange.of(scale, setting, 50_000).orElseThrow();
            assertThat(25 - trim)
                    .as("the setting's own CGs; seed %d, draw %d", seed, i)
                    .isBetween(right.fromPercentMac() - 1e-9, right.toPercentMac() + 1e-9);
        }
    }

    /** Between the ranges of two neighbouring settings there is neither a gap nor an overlap. */
    @ParameterizedTest
    @EnumSource(SettingRounding.class)
    void theRangesOfNeighboursMeet(SettingRounding rounding) {
        TrimScale scale = scale(rounding, "0.25", "-1.13", "2.4");
        for (int step = -8; step < 12; step++) {
            assertThat(scale.greatestTrimUnits(step * 0.25))
                    .as("above step %d", step)
                    .isCloseTo(scale.leastTrimUnits((step + 1) * 0.25), within(1e-9));
        }
    }

    private static Assessment check(TrimScale scale, double cgPercentMac) {
        AircraftType jet = SampleJet.type();
        AircraftType type = Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                jet.cabin(),
                jet.holds(),
                jet.groups(),
                jet.fuel(),
                jet.envelopes(),
                List.of(scale));
        double armM = type.geometry().chord().armAt(cgPercentMac);
        Loading plain = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(50_000, armM)))
                .fuel(new Fuel.NotGiven())
                .loading();
        Loading loading = Plain.loading(
                plain.origin(),
                plain.flight(),
                Plain.tail("TEST-1", type, plain.tail().basic()),
                plain.setting(),
                plain.crew(),
                plain.load(),
                plain.fuel(),
                plain.performance(),
                plain.recordedTrimUnits(),
                plain.extras());
        return Checker.check(loading, Balancer.balance(loading, STRICT), STRICT);
    }

    /** On the end of a band that is zero a share of the limit is no tolerance at all. */
    @Test
    void aTrimOnABandsEndAtZeroIsInside() {
        for (int i = 0; i < 200; i++) {
            double cg = 25 + (i - 100) * 1e-10;
            assertThat(check(scale(SettingRounding.NEAREST_HALFWAY_UP, "0.1", "0", "3"), cg)
                            .status())
                    .as("CG %s", cg)
                    .isEqualTo(Status.CLEAN);
        }
        EDGES.row(
                EdgeTopic.ROUNDED_SETTING,
                "trim 1e-9 units below a band that begins at 0.0, step 0.1",
                "clean",
                check(scale(SettingRounding.NEAREST_HALFWAY_UP, "0.1", "0", "3"), 25 + 1e-9)
                        .status()
                        .label());
        EDGES.row(
                EdgeTopic.ROUNDED_SETTING,
                "trim 0.001 units below a band that begins at 0.0, step 0.1",
                "breached",
                check(scale(SettingRounding.NEAREST_HALFWAY_UP, "0.1", "0", "3"), 25.001)
                        .status()
                        .label());
    }

    @Test
    void ties() {
        row(SettingRounding.NEAREST_HALFWAY_UP, "0.1", 2.95, "3.0 UP");
        row(SettingRounding.NEAREST_HALFWAY_UP, "0.1", -0.25, "0.2 DN");
        row(SettingRounding.NEAREST_HALFWAY_DOWN, "0.1", 2.95, "2.9 UP");
        row(SettingRounding.NOSE_UP, "0.1", 2.91, "3.0 UP");
        row(SettingRounding.NOSE_UP, "0.1", 2.90, "2.9 UP");
        row(SettingRounding.NOSE_DOWN, "0.1", 2.99, "2.9 UP");
        row(SettingRounding.NEAREST_HALFWAY_UP, "0.25", 3.12, "3.00 UP");
    }

    @Test
    void theEndOfABandBetweenTwoSteps() {
        EDGES.row(
                EdgeTopic.ROUNDED_SETTING,
                "trim 2.46 UP, step 0.1, band up to 2.46 UP (2.5 would be out of the band)",
                "2.4 UP",
                shown(scale(SettingRounding.NEAREST_HALFWAY_UP, "0.1", "-2", "2.46"), 2.46));
    }

    private static void row(SettingRounding rounding, String step, double trim, String setting) {
        TrimScale scale = scale(rounding, step, "-9", "9");
        double exact = scale.law().trimUnitsAt(25 - trim, 50_000).orElseThrow();
        EDGES.row(
                EdgeTopic.ROUNDED_SETTING,
                String.format(Locale.ROOT, "trim %+.2f, step %s, %s", trim, step, rounding.label()),
                setting,
                shown(scale, exact));
    }

    private static String shown(TrimScale scale, double trim) {
        return FindingText.trim(scale.settingFor(trim), scale.stepUnits(), scale.unit());
    }
}
