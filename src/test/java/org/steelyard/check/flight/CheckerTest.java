package org.steelyard.check.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.balance.Balancer;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.result.Status;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Each kind of finding on a jet with round numbers, whose answers can be worked out in the head. */
class CheckerTest {

    private static final Policy POLICY = Plain.policy(1, 1, 5, 0.25, SharingRule.BY_CAPACITY);

    private static Assessment check(SampleJet jet) {
        Loading loading = jet.loading();
        return Checker.check(loading, Balancer.balance(loading, POLICY), POLICY);
    }

    private static String text(Finding finding) {
        return finding.severity().label() + " " + finding.code().code() + ": "
                + FindingText.sentence(finding, SampleJet.type());
    }

    @Test
    void aFlightWellInsideEverythingIsClean() {
        Assessment assessment = check(SampleJet.loaded());
        assertThat(assessment.findings()).isEmpty();
        assertThat(assessment.status()).isEqualTo(Status.CLEAN);
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                Arguments.of(
                        SampleJet.loaded()
                                .tanks(5000, 5000, 4000)
                                .burn(0, 8000)
                                .hold(0, 2500)
                                .hold(2, 2500),
                        "breach mass-high: take-off mass 62400 kg is 2400 kg above the maximum take-off mass of 60000 kg"),
                Arguments.of(
                        SampleJet.loaded().tanks(5000, 5000, 3500).burn(0, 8000).hold(1, 1000),
                        "marginal mass-high: ramp mass 59900 kg is 600 kg below the maximum ramp mass of 60500 kg"),
                Arguments.of(
                        SampleJet.loaded().takeoffLimit(52_000),
                        "breach mass-high: take-off mass 53200 kg is 1200 kg above the performance-limited take-off mass of"
                                + " 52000 kg"),
                Arguments.of(
                        SampleJet.loaded().burn(0, 100).tanks(5000, 5000, 0),
                        "breach mass-high: landing mass 55300 kg is 300 kg above the maximum landing mass of 55000 kg"),
                Arguments.of(
                        SampleJet.loaded()
                                .zone(1, 30)
                                .hold(0, 3000)
                                .hold(2, 3000)
                                .hold(1, 900),
                        "breach mass-high: zero fuel mass 52300 kg is 300 kg above the maximum zero fuel mass of 52000 kg"),
                Arguments.of(
                        SampleJet.loaded()
                                .zone(0, 0)
                                .zone(1, 0)
                                .zone(2, 0)
                                .hold(0, 0)
                                .hold(2, 0)
                                .tanks(300, 300, 0)
                                .burn(0, 500),
                        "breach mass-low: landing mass 40500 kg is 500 kg below the minimum mass in flight of 41000 kg"),
                Arguments.of(SampleJet.loaded().zone(0, 31), "breach zone-seats: zone A: 31 persons for 30 seats"),
                Arguments.of(SampleJet.loaded().cabinCrew(5), "breach crew-seats: cabin crew: 5 persons for 4 seats"),
                Arguments.of(
                        SampleJet.loaded().hold(0, 3200).hold(2, 3000),
                        "breach hold-mass: hold 1 3200 kg is 200 kg above its limit of 3000 kg"),
                Arguments.of(
                        SampleJet.loaded().hold(2, 2900).hold(0, 2800),
                        "marginal hold-mass: hold 3 2900 kg is 100 kg below its limit of 3000 kg"),
                Arguments.of(
                        SampleJet.loaded().hold(2, 2600).hold(0, 2600).hold(1, 1500),
                        "breach group-mass: holds 2 and 3 4100 kg is 100 kg above its limit of 4000 kg"),
                Arguments.of(
                        SampleJet.loaded().hold(1, 2600),
                        "breach floor-running: hold 2 floor 1300.0 kg/m is 50.0 kg/m above its limit of 1250.0 kg/m"),
                Arguments.of(
                        SampleJet.loaded().hold(1, 2900).tanks(3000, 3000, 0).burn(0, 5000),
                        "marginal floor-area: hold 2 floor 966.7 kg/m² is 33.3 kg/m² below its limit of 1000.0 kg/m²"),
                Arguments.of(
                        SampleJet.loaded().tanks(5100, 5000, 0).burn(0, 6000),
                        "breach tank-capacity: left tank 5100 kg is 100 kg above its limit of 5000 kg"),
                Arguments.of(
                        SampleJet.loaded().tanks(3600, 3000, 2000),
                        "breach fuel-imbalance: fuel imbalance of 600 kg at ramp between left tank and right tank with"
                                + " 8600 kg aboard is 100 kg above the limit of 500 kg"),
                Arguments.of(
                        SampleJet.loaded().tanks(2000, 2000, 0).burn(200, 4000),
                        "breach fuel-short: taxi and trip burn 4200 kg but 4000 kg is aboard"));
    }

    @ParameterizedTest
    @MethodSource("faults")
    void eachLimitHasItsFindingAndSentence(SampleJet jet, String expected) {
        assertThat(check(jet).findings())
                .extracting(CheckerTest::text)
                .anySatisfy(text -> assertThat(text).startsWith(expected));
    }

    /**
     * Zero fuel 46,200 kg; hold 3 and zone C stand 2 m aft of 17 m (25 % MAC): (2,800 + 2,000) × 2 = 9,600 kg·m, and
     * 9,600/46,200 m are 5.19 % of the chord of 4 m.
     */
    @Test
    void aCgBehindTheLimitIsABreachWithItsMarginInPercentMac() {
        Assessment assessment =
                check(SampleJet.loaded().hold(0, 0).hold(2, 2800).zone(0, 0).zone(2, 20));
        double zeroFuelKg = 40_000 + 400 + 3000 + 2800;
        double cgPercentMac = 25 + 100 * (2800 * 2 + 2000 * 2) / zeroFuelKg / 4;
        Finding finding = assessment.findings().get(0);
        assertThat(text(finding))
                .startsWith("breach cg-aft: zero fuel CG 30.19 % MAC is 0.20 % MAC behind the aft limit");
        assertThat(finding.value()).isCloseTo(cgPercentMac, within(1e-9));
        assertThat(finding.limit()).isCloseTo(30, within(1e-9));
        assertThat(finding.margin()).isCloseTo(30 - cgPercentMac, within(1e-9));
        assertThat(assessment.status()).isEqualTo(Status.BREACHED);
    }

    @Test
    void aCgOnTheLimitIsInsideThoughMarginal() {
        Load onLimit = new Load.ZeroFuelGiven(MassMoment.at(50_000, 17.2));
        Assessment assessment = check(SampleJet.loaded().load(onLimit).fuel(new Fuel.Total(4000, 0, 2000)));
        assertThat(assessment.findings())
                .filteredOn(finding -> finding.phase() == Phase.ZERO_FUEL)
                .extracting(CheckerTest::text)
                .contains(
                        "marginal cg-aft: zero fuel CG 30.00 % MAC is 0.00 % MAC ahead of the aft limit of 30.00 % MAC")
                .noneMatch(text -> text.startsWith("breach"));
    }

    @Test
    void aMassOnItsLimitIsInside() {
        Load exact = new Load.ZeroFuelGiven(MassMoment.at(52_000, 17));
        assertThat(check(SampleJet.loaded().load(exact).fuel(new Fuel.Total(4000, 0, 2000)))
                        .status())
                .isEqualTo(Status.MARGINAL);
    }

    @Test
    void aMassBeyondTheEnvelopeIsABreachUnlessAMassLimitSaysSoAlready() {
        List<Finding> light = check(SampleJet.loaded()
                        .load(new Load.TakeoffGiven(MassMoment.at(40_500, 17)))
                        .fuel(new Fuel.NotGiven()))
                .findings();
        assertThat(light)
                .extracting(CheckerTest::text)
                .contains(
                        "breach mass-low: take-off mass 40500 kg is 500 kg below the minimum mass in flight of 41000 kg",
                        "note mass-off-envelope: take-off mass 40500 kg is 500 kg below the masses of the take-off envelope,"
                                + " which begin at 41000 kg");
    }

    @Test
    void theTrafficLoadAllowedIsTheLeastOfTheLimitsAndSaysWhich() {
        // dry operating 40,400; zero fuel leaves 11,600; take-off 60,000 - 7,800 - 40,400 = 11,800;
        // landing 55,000 - 2,800 - 40,400 = 11,800
        TrafficLoad load = check(SampleJet.loaded()).trafficLoad().orElseThrow();
        assertThat(load.allowedKg()).isCloseTo(11_600, within(1e-9));
        assertThat(load.limitedBy()).isEqualTo(LimitingMass.ZERO_FUEL);
        assertThat(load.actualKg()).isCloseTo(5_000, within(1e-9));
        assertThat(load.underloadKg()).isCloseTo(6_600, within(1e-9));
        TrafficLoad day =
                check(SampleJet.loaded().takeoffLimit(55_000)).trafficLoad().orElseThrow();
        assertThat(day.allowedKg()).isCloseTo(55_000 - 7_800 - 40_400, within(1e-9));
        assertThat(day.limitedBy()).isEqualTo(LimitingMass.TAKEOFF_PERFORMANCE);
    }

    @Test
    void trimNearAnEndOfItsBandIsMarginalAndOffTheScaleABreach() {
        // trim is 0.5 unit nose-down for each % MAC aft of 25; the band ends at 2 UP, which is 21 % MAC
        assertThat(texts(takeoff(21.2)))
                .contains(
                        "marginal trim-band: take-off trim 1.90 UP is 0.10 units inside the nose-up end of its band at 2.00 UP");
        assertThat(texts(takeoff(20.6)))
                .contains(
                        "breach trim-band: take-off trim 2.20 UP is 0.20 units outside the nose-up end of its band at 2.00 UP");
        assertThat(texts(takeoff(29.5)))
                .contains(
                        "breach trim-band: take-off trim 2.25 DN is 0.25 units outside the nose-down end of its band at 2.00 DN");
        assertThat(texts(takeoff(18.5)))
                .contains(
                        "breach trim-off-scale: the take-off trim scale for flaps 5 gives no setting for a CG of 18.50 % MAC; it"
                                + " covers 19.0 to 31.0 % MAC");
        assertThat(texts(SampleJet.loaded().flaps("")))
                .contains("note trim-unknown: no take-off trim, because the flap setting is not given");
    }

    private static SampleJet takeoff(double cgPercentMac) {
        double armM = SampleJet.type().geometry().chord().armAt(cgPercentMac);
        return SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(50_000, armM)))
                .fuel(new Fuel.NotGiven());
    }

    private static List<String> texts(SampleJet jet) {
        return check(jet).findings().stream().map(CheckerTest::text).toList();
    }

    @Test
    void theRoomToEachEnvelopeIsTold() {
        Assessment assessment = check(SampleJet.loaded());
        assertThat(assessment.margins())
                .extracting(EnvelopeMargin::phase)
                .containsExactly(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.FLIGHT, Phase.LANDING);
        assertThat(assessment.margins().get(1).forwardPercentMac()).isCloseTo(5, within(1e-9));
        assertThat(assessment.margins().get(2).aftPercentMac()).isCloseTo(6, within(1e-9));
        assertThat(assessment.margins().get(1).aftMomentKgM()).isCloseTo(0.2 * 53_200, within(1e-6));
        assertThat(assessment.margins().get(1).massKg()).isCloseTo(6_800, within(1e-9));
    }

    @Test
    void breachesComeFirstThenMarginalsThenNotes() {
        Assessment assessment = check(SampleJet.loaded().flaps("").hold(0, 3100).hold(2, 2900));
        assertThat(assessment.findings())
                .extracting(finding -> finding.severity().label())
                .containsExactly("breach", "marginal", "note");
    }
}
