package org.steelyard.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balancer;
import org.steelyard.check.flight.Checker;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.loading.FlightSetting;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.EdgeTable;
import org.steelyard.samples.EdgeTopic;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/**
 * What is said of a trim that is not there, or that the type has in another unit for another setting: a type with
 * scales for flaps 1 (any thrust, units), 5 (thrust TO1 and TO2, units) and 15 (degrees), and for landing flaps 30.
 */
class TrimWordsTest {

    private static final EdgeTable EDGES = new EdgeTable(TrimWordsTest.class);
    private static final Policy POLICY = Plain.policy(0, 0, 0, 4, SharingRule.BY_CAPACITY);
    private static final AircraftType TYPE = type(
            scale(Phase.TAKEOFF, "1", "", TrimUnit.UNITS),
            scale(Phase.TAKEOFF, "5", "TO1", TrimUnit.UNITS),
            scale(Phase.TAKEOFF, "5", "TO2", TrimUnit.UNITS),
            scale(Phase.TAKEOFF, "15", "", TrimUnit.DEGREES),
            scale(Phase.LANDING, "30", "", TrimUnit.UNITS));

    @AfterAll
    static void write() {
        EDGES.write();
    }

    private static TrimScale scale(Phase phase, String flaps, String thrust, TrimUnit unit) {
        return Plain.trimScale(
                phase,
                flaps,
                thrust,
                unit,
                new TrimSlope(new TrimPoint(25, 1.0), -0.1, new CgRange(0, 60)),
                0.1,
                -5,
                5);
    }

    private static AircraftType type(TrimScale... scales) {
        AircraftType jet = SampleJet.type();
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
                List.of(scales));
    }

    private static Loading loading(AircraftType type, FlightSetting setting, Load load, Fuel fuel) {
        Loading sample = SampleJet.loaded().loading();
        return Plain.loading(
                sample.origin(),
                sample.flight(),
                Plain.tail("T-1", type, sample.tail().basic()),
                setting,
                sample.crew(),
                load,
                fuel,
                sample.performance(),
                OptionalDouble.empty(),
                List.of());
    }

    private static Loading loading(String flaps, String thrust, String landingFlaps) {
        Loading sample = SampleJet.loaded().loading();
        return loading(TYPE, new FlightSetting(flaps, thrust, landingFlaps), sample.load(), sample.fuel());
    }

    private static Loading takeoff(AircraftType type, String flaps, double cgPercentMac) {
        return loading(
                type,
                new FlightSetting(flaps, "", ""),
                new Load.TakeoffGiven(
                        MassMoment.at(50_000, type.geometry().chord().armAt(cgPercentMac))),
                new Fuel.NotGiven());
    }

    private static List<Finding> findings(Loading loading, FindingCode code) {
        return Checker.check(loading, Balancer.balance(loading, POLICY), POLICY).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static String sentence(Loading loading, FindingCode code) {
        return String.join(
                "; ",
                findings(loading, code).stream()
                        .map(finding ->
                                finding.severity().label() + ": " + FindingText.sentence(finding, loading.type()))
                        .toList());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            nullValues = "-",
            value = {
                "''|''|note: no take-off trim, because the flap setting is not given",
                "5|''|note: no take-off trim, because the thrust rating is not given",
                "20|''|note: no take-off trim, because the type has no scale for flaps 20; it has scales for 1, 5 and 15",
                "20|TO1|note: no take-off trim, because the type has no scale for flaps 20; it has scales for 1, 5 and 15",
                "5|TO3|note: no take-off trim, because the type has no scale for flaps 5 with thrust TO3; it has scales"
                        + " for TO1 and TO2",
                "5|TO1|''",
                "1|TO1|''"
            })
    void whatIsMissingForATakeoffTrimIsSaid(String flaps, String thrust, String said) {
        EDGES.row(
                flaps.equals("20") && thrust.isEmpty() ? EdgeTopic.UNKNOWN_FLAPS : EdgeTopic.WORDS,
                "flaps '" + flaps + "', thrust '" + thrust
                        + "', of a type with scales for flaps 1, 15, and 5 by thrust",
                said,
                sentence(loading(flaps, thrust, ""), FindingCode.TRIM_UNKNOWN));
    }

    @Test
    void landingFlapsWithoutAScaleAreANote() {
        EDGES.row(
                EdgeTopic.UNKNOWN_FLAPS,
                "landing flaps 25 of a type with a landing scale for 30",
                "note: no landing trim, because the type has no scale for flaps 25; it has a scale for 30",
                sentence(loading("1", "", "25"), FindingCode.TRIM_UNKNOWN));
        assertThat(sentence(loading("1", "", "30"), FindingCode.TRIM_UNKNOWN)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"5.0", "Flaps 5", "flaps 5", "FLAP 5", "'5,0'", "05", "5°", "5 deg", "' 5 '"})
    void equalWritingsAreOneSetting(String writing) {
        EDGES.row(
                EdgeTopic.UNKNOWN_FLAPS,
                "flaps written '" + writing + "' of a scale for 5; trim at 25 % MAC",
                "1.00",
                Balancer.balance(loading(writing, "TO1", ""), POLICY)
                        .takeoffTrim()
                        .map(trim -> String.format(
                                java.util.Locale.ROOT, "%.2f", trim.trimUnits().orElseThrow()))
                        .orElse("none"));
    }

    /** At 60 % MAC the trim is 1.0 - 0.1 × 35 = -2.5, which is 2.5 from the end of the band at -5. */
    @Test
    void theBandOfEachScaleIsInItsOwnUnit() {
        EDGES.row(
                EdgeTopic.WORDS,
                "trim -2.5 on the scale of flaps 15 in degrees, beside scales in units; band to -5, marginal within 4",
                "marginal: take-off trim 2.50° DN is 2.50 degrees inside the nose-down end of its band at 5.00° DN",
                sentence(takeoff(TYPE, "15", 60), FindingCode.TRIM_BAND));
        EDGES.row(
                EdgeTopic.WORDS,
                "the same on the scale of flaps 1 in units, after one in degrees",
                "marginal: take-off trim 2.50 DN is 2.50 units inside the nose-down end of its band at 5.00 DN",
                sentence(
                        takeoff(
                                type(
                                        scale(Phase.TAKEOFF, "15", "", TrimUnit.DEGREES),
                                        scale(Phase.TAKEOFF, "1", "", TrimUnit.UNITS)),
                                "1",
                                60),
                        FindingCode.TRIM_BAND));
    }

    @Test
    void aGivenStateSaysAllThatIsNotChecked() {
        EDGES.row(
                EdgeTopic.WORDS,
                "take-off mass and CG alone",
                "note: the take-off mass and CG were taken as given; crew, zones, holds, tanks, zero fuel, ramp, flight"
                        + " and landing are not checked",
                sentence(takeoff(TYPE, "1", 25), FindingCode.GIVEN_STATE));
        Loading sample = SampleJet.loaded().loading();
        EDGES.row(
                EdgeTopic.WORDS,
                "zero-fuel mass and CG with fuel",
                "note: the zero-fuel mass and CG were taken as given; crew, zones and holds are not checked",
                sentence(
                        loading(
                                TYPE,
                                new FlightSetting("1", "", ""),
                                new Load.ZeroFuelGiven(MassMoment.at(45_000, 17)),
                                sample.fuel()),
                        FindingCode.GIVEN_STATE));
    }
}
