package org.steelyard.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.check.result.Assessment;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.SettingRounding;
import org.steelyard.model.trim.TrimBasis;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** The recorded setting against the right one, on a jet whose right setting at 25 % MAC is 1.0 UP. */
class RecordedTrimTest {

    private static final Policy HELD =
            Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY, Optional.of(new RecordedTrimRule(0.3, 0.6, "pilot")));

    private static AircraftType type(TrimUnit unit, TrimBasis basis, String... thrusts) {
        AircraftType jet = SampleJet.type();
        List<TrimScale> scales = java.util.stream.Stream.of(thrusts)
                .map(thrust -> new TrimScale(
                        Phase.TAKEOFF,
                        "5",
                        thrust,
                        unit,
                        new TrimSlope(
                                new TrimPoint(25, thrust.equals("reduced") ? 1.5 : 1.0), -0.1, new CgRange(0, 60)),
                        0.1,
                        -5,
                        5,
                        SettingRounding.NEAREST_HALFWAY_UP,
                        basis))
                .toList();
        return Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                jet.cabin(),
                jet.holds(),
                jet.groups(),
                jet.fuel(),
                jet.envelopes(),
                scales);
    }

    private static Loading loading(AircraftType type, String thrust, Optional<Load> load, OptionalDouble recorded) {
        Loading sample = SampleJet.loaded().loading();
        return Plain.loading(
                sample.origin(),
                new FlightIdent("T1", LocalDate.of(2026, 4, 1), "", ""),
                Plain.tail("T-1", type, sample.tail().basic()),
                new FlightSetting("5", thrust, ""),
                sample.crew(),
                load.orElse(sample.load()),
                sample.fuel(),
                sample.performance(),
                recorded,
                List.of());
    }

    private static List<Finding> findings(Loading loading, Policy policy) {
        return Checker.check(loading, Balancer.balance(loading, policy), policy).findings().stream()
                .filter(finding -> finding.code() == FindingCode.TRIM_RECORDED)
                .toList();
    }

    private static List<Finding> findings(double recorded) {
        AircraftType type = type(TrimUnit.UNITS, TrimBasis.DOCUMENT, "");
        return findings(loading(type, "", Optional.empty(), OptionalDouble.of(recorded)), HELD);
    }

    @ParameterizedTest
    @CsvSource({"1.0", "1.3", "0.7", "0.9"})
    void withinTheToleranceAndOnItNothingIsFound(double recorded) {
        assertThat(findings(recorded)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "1.4, marginal, 0.4 too far nose-up: it may rotate early",
        "1.6, marginal, 0.6 too far nose-up: it may rotate early",
        "1.7, breach, 0.7 too far nose-up: it may rotate early",
        "0.6, marginal, 0.4 too far nose-down: it may rotate late",
        "-1.0, breach, 2.0 too far nose-down: it may rotate late"
    })
    void beyondItSideSizeAndRiskAreNamed(double recorded, String severity, String words) {
        Finding finding = findings(recorded).get(0);
        assertThat(finding.severity().label()).isEqualTo(severity);
        assertThat(FindingText.sentence(finding, SampleJet.type()))
                .contains("where 1.0 UP is right")
                .contains(words);
        assertThat(finding.value()).isEqualTo(recorded);
        double off = Math.abs(recorded - 1.0);
        assertThat(finding.margin()).isCloseTo(0.6 - off, org.assertj.core.api.Assertions.within(1e-9));
    }

    @Test
    void degreesAreShownAsDegrees() {
        AircraftType type = type(TrimUnit.DEGREES, TrimBasis.DOCUMENT, "");
        Finding finding = findings(loading(type, "", Optional.empty(), OptionalDouble.of(-0.4)), HELD)
                .get(0);
        assertThat(FindingText.sentence(finding, type))
                .startsWith("take-off trim was recorded as 0.4° DN where 1.0° UP is right, 1.4° too far nose-down");
    }

    @Test
    void aPolicyWithoutTheRuleFindsNothing() {
        AircraftType type = type(TrimUnit.UNITS, TrimBasis.DOCUMENT, "");
        Policy plain = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);
        assertThat(findings(loading(type, "", Optional.empty(), OptionalDouble.of(4)), plain))
                .isEmpty();
    }

    /** Where the load is only assumed, so is the right setting. */
    @Test
    void aSharedLoadIsNotHeldToIt() {
        AircraftType type = type(TrimUnit.UNITS, TrimBasis.DOCUMENT, "");
        Load totals = new Load.Totals(new Passengers(0, 0, 30, 0, 0), OptionalDouble.empty(), new HoldLoad(2000, 0));
        assertThat(findings(loading(type, "", Optional.of(totals), OptionalDouble.of(4)), HELD))
                .isEmpty();
    }

    @Test
    void theScaleOfTheThrustRatingDecidesWhatIsRight() {
        AircraftType type = type(TrimUnit.UNITS, TrimBasis.DOCUMENT, "full", "reduced");
        assertThat(findings(loading(type, "full", Optional.empty(), OptionalDouble.of(1.5)), HELD))
                .hasSize(1);
        assertThat(findings(loading(type, "reduced", Optional.empty(), OptionalDouble.of(1.5)), HELD))
                .isEmpty();
        Loading noRating = loading(type, "", Optional.empty(), OptionalDouble.empty());
        assertThat(Checker.check(noRating, Balancer.balance(noRating, HELD), HELD)
                        .findings())
                .extracting(finding -> FindingText.sentence(finding, type))
                .contains("no take-off trim, because the thrust rating is not given");
    }

    @Test
    void aScaleForAnyRatingStandsInWhereTheRatingHasNone() {
        AircraftType type = type(TrimUnit.UNITS, TrimBasis.DOCUMENT, "", "reduced");
        assertThat(type.trimScale(Phase.TAKEOFF, "5", "full").orElseThrow().thrustRating())
                .isEmpty();
        assertThat(type.trimScale(Phase.TAKEOFF, "5", "reduced").orElseThrow().thrustRating())
                .isEqualTo("reduced");
    }

    @Test
    void anEstimatedScaleIsSaidToBeOne() {
        AircraftType type = type(TrimUnit.UNITS, TrimBasis.ESTIMATE, "");
        Loading loading = loading(type, "", Optional.empty(), OptionalDouble.empty());
        Assessment assessment = Checker.check(loading, Balancer.balance(loading, HELD), HELD);
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.code() == FindingCode.TRIM_ESTIMATE)
                .hasSize(1)
                .allSatisfy(finding -> {
                    assertThat(finding.severity()).isEqualTo(Severity.NOTE);
                    assertThat(FindingText.sentence(finding, type))
                            .contains("is an estimate from the balance of moments");
                });
    }

    /** A scale in degrees says so in the finding on its band, too. */
    @Test
    void theBandOfAScaleInDegreesIsInDegrees() {
        AircraftType degrees = type(TrimUnit.DEGREES, TrimBasis.DOCUMENT, "");
        Loading loading = loading(degrees, "", Optional.empty(), OptionalDouble.empty());
        Loading forward = Plain.loading(
                loading.origin(),
                loading.flight(),
                loading.tail(),
                loading.setting(),
                loading.crew(),
                new Load.TakeoffGiven(
                        MassMoment.at(50_000, degrees.geometry().chord().armAt(55))),
                new org.steelyard.model.loading.Fuel.NotGiven(),
                loading.performance(),
                OptionalDouble.empty(),
                List.of());
        Policy near = Plain.policy(0, 0, 0, 4, SharingRule.BY_CAPACITY);
        assertThat(Checker.check(forward, Balancer.balance(forward, near), near).findings())
                .extracting(finding -> FindingText.sentence(finding, degrees))
                .anySatisfy(text -> assertThat(text).contains("take-off trim 2.00° DN"));
    }
}
