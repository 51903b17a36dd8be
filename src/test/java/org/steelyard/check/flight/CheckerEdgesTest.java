package org.steelyard.check.flight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.balance.Balancer;
import org.steelyard.balance.FuelPath;
import org.steelyard.check.result.Assessment;
import org.steelyard.check.result.EnvelopeMargin;
import org.steelyard.check.result.LimitingMass;
import org.steelyard.check.result.TrafficLoad;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.LoadGroup;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** What lies on the edge of a check, on a jet with round numbers whose type is changed a little. */
class CheckerEdgesTest {

    private static final Policy STRICT = Plain.policy(0, 0, 0, 0, SharingRule.BY_CAPACITY);

    private static LimitLine level(Side side, double armM, double fromKg, double toKg) {
        return new LimitLine(side, Straightness.ARM, List.of(new LimitPoint(fromKg, armM), new LimitPoint(toKg, armM)));
    }

    private static Envelope flight(double fromKg, double toKg) {
        return new Envelope(Phase.FLIGHT, level(Side.FORWARD, 16.5, fromKg, toKg), level(Side.AFT, 17.5, fromKg, toKg));
    }

    private static AircraftType jet(List<Envelope> envelopes, List<LoadGroup> groups, List<TrimScale> scales) {
        AircraftType jet = SampleJet.type();
        return Plain.aircraftType(
                jet.id(),
                jet.name(),
                jet.geometry(),
                jet.limits(),
                jet.cabin(),
                jet.holds(),
                groups,
                jet.fuel(),
                envelopes,
                scales);
    }

    private static Assessment check(AircraftType type, SampleJet jet) {
        Loading plain = jet.loading();
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

    private static List<Envelope> withFlight(Envelope flight) {
        return List.of(SampleJet.type().envelope(Phase.TAKEOFF).orElseThrow(), flight);
    }

    /** Take-off is at 53,200 kg and landing at 48,200 kg. */
    @ParameterizedTest
    @CsvSource({
        "40000, 60000, 0, 0, 0",
        "48200, 53200, 0, 0, 0",
        "40000, 53000, 1, 53200, 53000",
        "48500, 60000, 1, 48200, 48500",
        "49000, 53000, 2, 53200, 53000"
    })
    void aFlightThatLeavesTheMassesOfItsEnvelopeIsToldAtEachEnd(
            double fromKg, double toKg, int findings, double valueKg, double limitKg) {
        AircraftType type = jet(withFlight(flight(fromKg, toKg)), List.of(), List.of());
        List<Finding> found = check(type, SampleJet.loaded()).findings();
        assertThat(found).hasSize(findings).allMatch(one -> one.code() == FindingCode.MASS_OFF_ENVELOPE);
        if (findings > 0) {
            Finding first = found.get(0);
            assertThat(first.severity()).isEqualTo(Severity.BREACH);
            assertThat(first.value()).isCloseTo(valueKg, within(1e-9));
            assertThat(first.limit()).isEqualTo(limitKg);
            assertThat(first.margin()).isCloseTo(-Math.abs(valueKg - limitKg), within(1e-9));
        }
    }

    @Test
    void aFlightThatBurnsNothingIsToldOnce() {
        AircraftType type = jet(withFlight(flight(40_000, 45_000)), List.of(), List.of());
        assertThat(check(type, SampleJet.loaded().burn(0, 0)).findings()).hasSize(1);
    }

    @Test
    void aGroupOfHoldsAndZonesCountsBoth() {
        LoadGroup rear = new LoadGroup("rear", "rear body", List.of(2), List.of(2), 1_999);
        AircraftType type = jet(SampleJet.type().envelopes(), List.of(rear), List.of());
        Finding finding = check(type, SampleJet.loaded()).findings().get(0);
        assertThat(finding.code()).isEqualTo(FindingCode.GROUP_MASS);
        assertThat(finding.value()).isCloseTo(2_000, within(1e-9));
        assertThat(finding.margin()).isCloseTo(-1, within(1e-9));
    }

    @Test
    void whatTheTrimScaleDoesNotReachIsNamed() {
        TrimTable law = new TrimTable(
                Amounts.of(50_000, 52_000), Amounts.of(20, 30), List.of(Amounts.of(2, -2), Amounts.of(2, -2)));
        TrimScale scale = Plain.trimScale(Phase.TAKEOFF, "5", "", TrimUnit.UNITS, law, 0.1, -3, 3);
        AircraftType type = jet(SampleJet.type().envelopes(), List.of(), List.of(scale));
        Finding byMass = check(type, SampleJet.loaded()).findings().get(0);
        assertThat(byMass.code()).isEqualTo(FindingCode.TRIM_OFF_SCALE);
        assertThat(byMass.quantity()).isEqualTo(Quantity.MASS);
        assertThat(byMass.limit()).isEqualTo(52_000);
        assertThat(byMass.margin()).isCloseTo(-1_200, within(1e-6));
        assertThat(byMass.subject())
                .contains("a mass of 53200 kg; it is for masses from 50000 kg to 52000 kg")
                .doesNotContain("% MAC");
        Finding forward = offScale(type, 19);
        assertThat(forward.value()).isCloseTo(19, within(1e-9));
        assertThat(forward.limit()).isEqualTo(20);
        assertThat(forward.margin()).isCloseTo(-1, within(1e-9));
        Finding aft = offScale(type, 32);
        assertThat(aft.limit()).isEqualTo(30);
        assertThat(aft.margin()).isCloseTo(-2, within(1e-9));
        assertThat(aft.subject()).contains("a CG of 32.00 % MAC");
    }

    private static Finding offScale(AircraftType type, double cgPercentMac) {
        double armM = type.geometry().chord().armAt(cgPercentMac);
        SampleJet jet = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(51_000, armM)))
                .fuel(new Fuel.NotGiven());
        return check(type, jet).findings().stream()
                .filter(finding -> finding.code() == FindingCode.TRIM_OFF_SCALE)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aTypeWithoutScalesLacksNoTrim() {
        AircraftType type = jet(SampleJet.type().envelopes(), List.of(), List.of());
        assertThat(check(type, SampleJet.loaded().flaps("")).findings()).isEmpty();
        List<TrimScale> landingOnly = List.of(SampleJet.type().trimScales().get(1));
        AircraftType landing = jet(SampleJet.type().envelopes(), List.of(), landingOnly);
        assertThat(check(landing, SampleJet.loaded().flaps("")).findings()).isEmpty();
    }

    @Test
    void aTrimOnTheEndOfItsBandIsInside() {
        TrimScale scale = SampleJet.type().trimScales().get(0);
        TrimScale ending =
                Plain.trimScale(scale.phase(), scale.flaps(), "", scale.unit(), scale.law(), scale.stepUnits(), 0, 3);
        AircraftType type = jet(SampleJet.type().envelopes(), List.of(), List.of(ending));
        assertThat(check(type, SampleJet.loaded()).findings()).isEmpty();
    }

    private static double roomM(LimitLine line, MassMoment... path) {
        return PathApproach.find(new FuelPath(List.of(path)), line)
                .orElseThrow()
                .roomM();
    }

    /** Just above the step the limit is at its strictest: only there is the room least. */
    @Test
    void eachSideOfAStepIsLookedAt() {
        List<LimitPoint> upward = List.of(
                new LimitPoint(50, 10), new LimitPoint(100, 10), new LimitPoint(100, 8), new LimitPoint(150, 9));
        LimitLine strictAbove = new LimitLine(Side.AFT, Straightness.ARM, upward);
        assertThat(roomM(strictAbove, MassMoment.at(140, 7.5), MassMoment.at(60, 7.5)))
                .isCloseTo(0.5, within(1e-12));
        List<LimitPoint> downward = List.of(
                new LimitPoint(50, 9), new LimitPoint(100, 8), new LimitPoint(100, 10), new LimitPoint(150, 10));
        LimitLine strictBelow = new LimitLine(Side.AFT, Straightness.ARM, downward);
        assertThat(roomM(strictBelow, MassMoment.at(140, 7.5), MassMoment.at(60, 7.5)))
                .isCloseTo(0.5, within(1e-12));
    }

    @Test
    void theSidesOfAStepInMomentAreLookedAtToo() {
        List<LimitPoint> points = List.of(
                new LimitPoint(50, 10), new LimitPoint(100, 10), new LimitPoint(100, 8), new LimitPoint(150, 9));
        LimitLine line = new LimitLine(Side.AFT, Straightness.MOMENT, points);
        assertThat(roomM(line, MassMoment.at(140, 7.5), MassMoment.at(60, 7.5))).isCloseTo(0.5, within(1e-12));
        List<LimitPoint> mirrored = new ArrayList<>();
        points.forEach(point -> mirrored.add(new LimitPoint(point.massKg(), 20 - point.armM())));
        LimitLine forward = new LimitLine(Side.FORWARD, Straightness.MOMENT, mirrored);
        assertThat(roomM(forward, MassMoment.at(140, 12.5), MassMoment.at(60, 12.5)))
                .isCloseTo(0.5, within(1e-12));
    }

    @Test
    void aPathThatOnlyTouchesTheMassesOfTheLineHasAnApproachThere() {
        LimitLine line = level(Side.AFT, 10, 50, 100);
        assertThat(roomM(line, MassMoment.at(140, 9), MassMoment.at(100, 9.5))).isCloseTo(0.5, within(1e-12));
        assertThat(roomM(line, MassMoment.at(50, 9.5), MassMoment.at(40, 9))).isCloseTo(0.5, within(1e-12));
    }

    @Test
    void ofEqualLimitsTheFirstIsNamedAndTheDayBindsOnlyWhereItIsLower() {
        MassLimits limits = new MassLimits(110, 100, 90, 80, 1);
        // take-off fuel 20, trip 10, taxi 10: each limit allows 100 at take-off
        LimitingMasses equal = LimitingMasses.of(limits, PerformanceLimits.NONE, 30, 20, 10);
        assertThat(equal.limitedBy()).isEqualTo(LimitingMass.ZERO_FUEL);
        assertThat(equal.maxTakeoffKg()).isEqualTo(100);
        for (LimitingMass limit : List.of(LimitingMass.TAKEOFF, LimitingMass.LANDING, LimitingMass.RAMP)) {
            assertThat(equal.takeoffKg(limit)).isEqualTo(100);
        }
        assertThat(equal.takeoffKg(LimitingMass.TAKEOFF_PERFORMANCE)).isInfinite();
        assertThat(equal.takeoffKg(LimitingMass.LANDING_PERFORMANCE)).isInfinite();
        PerformanceLimits day = new PerformanceLimits(OptionalDouble.of(99), OptionalDouble.of(88));
        LimitingMasses ofTheDay = LimitingMasses.of(limits, day, 30, 20, 10);
        assertThat(ofTheDay.limitedBy()).isEqualTo(LimitingMass.LANDING_PERFORMANCE);
        assertThat(ofTheDay.maxTakeoffKg()).isEqualTo(98);
        assertThat(ofTheDay.trafficLoad(50, 20)).isEqualTo(new TrafficLoad(28, 20, LimitingMass.LANDING_PERFORMANCE));
        assertThat(ofTheDay.trafficLoad(50, 20).underloadKg()).isEqualTo(8);
        assertThat(ofTheDay.fuelRoomKg(90, 100)).isEqualTo(8);
        assertThat(ofTheDay.fuelRoomKg(90, 5)).isEqualTo(5);
        assertThat(ofTheDay.fuelRoomKg(99, 5)).isEqualTo(-1);
        MassLimits heavyZeroFuel = new MassLimits(110, 100, 90, 70, 1);
        LimitingMasses zeroFuel = LimitingMasses.of(heavyZeroFuel, PerformanceLimits.NONE, 30, 20, 10);
        assertThat(zeroFuel.maxTakeoffKg()).isEqualTo(90);
        assertThat(zeroFuel.fuelRoomKg(85, 100)).isEqualTo(15);
    }

    private static List<Finding> findings(SampleJet jet, FindingCode code) {
        return check(SampleJet.type(), jet).findings().stream()
                .filter(finding -> finding.code() == code)
                .toList();
    }

    private static void figures(List<Finding> found, double value, double limit, double margin) {
        assertThat(found).hasSize(1);
        assertThat(found.get(0).value()).isCloseTo(value, within(1e-9));
        assertThat(found.get(0).limit()).isCloseTo(limit, within(1e-9));
        assertThat(found.get(0).margin()).isCloseTo(margin, within(1e-9));
    }

    @Test
    void theMarginOfABreachIsWhatIsTooMuchWithAMinus() {
        figures(findings(SampleJet.loaded().zone(0, 33), FindingCode.ZONE_SEATS), 33, 30, -3);
        figures(findings(SampleJet.loaded().tanks(3600, 3000, 2000), FindingCode.FUEL_IMBALANCE), 600, 500, -100);
        figures(
                findings(SampleJet.loaded().tanks(1000, 1000, 0).burn(500, 2000), FindingCode.FUEL_SHORT),
                2500,
                2000,
                -500);
        SampleJet light = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(40_900, 17)))
                .fuel(new Fuel.NotGiven());
        figures(findings(light, FindingCode.MASS_LOW), 40_900, 41_000, -100);
        SampleJet nose = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(50_000, 16.76)))
                .fuel(new Fuel.NotGiven());
        figures(findings(nose, FindingCode.CG_FORWARD), 19, 20, -1);
        SampleJet tail = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(50_000, 17.28)))
                .fuel(new Fuel.NotGiven());
        figures(findings(tail, FindingCode.CG_AFT), 32, 30, -2);
    }

    @Test
    void theRoomToAnEnvelopeIsInPercentMacInMomentAndInMass() {
        SampleJet jet = SampleJet.loaded()
                .load(new Load.TakeoffGiven(MassMoment.at(50_000, 16.9)))
                .fuel(new Fuel.NotGiven());
        EnvelopeMargin margin = check(SampleJet.type(), jet).margins().get(0);
        assertThat(margin.forwardPercentMac()).isCloseTo(2.5, within(1e-9));
        assertThat(margin.aftPercentMac()).isCloseTo(7.5, within(1e-9));
        assertThat(margin.forwardMomentKgM()).isCloseTo(5_000, within(1e-6));
        assertThat(margin.aftMomentKgM()).isCloseTo(15_000, within(1e-6));
        assertThat(margin.massKg()).isCloseTo(10_000, within(1e-9));
    }

    @Test
    void theTrimForLandingIsHeldAgainstItsBandToo() {
        TrimScale scale = SampleJet.type().trimScales().get(1);
        TrimScale narrow =
                Plain.trimScale(scale.phase(), scale.flaps(), "", scale.unit(), scale.law(), scale.stepUnits(), 1.5, 6);
        AircraftType type = jet(SampleJet.type().envelopes(), List.of(), List.of(narrow));
        List<Finding> found = check(type, SampleJet.loaded()).findings();
        figures(found, 1, 1.5, -0.5);
        assertThat(found.get(0).phase()).isEqualTo(Phase.LANDING);
    }

    @Test
    void whatWasAssumedOrTakenAsGivenIsNoted() {
        assertThat(notes(SampleJet.loaded()
                        .load(new Load.Totals(Passengers.adults(30), OptionalDouble.empty(), new HoldLoad(300, 0)))
                        .fuel(new Fuel.Total(8000, 200, 5000))))
                .containsExactly(
                        "zero fuel: totals were shared out among zones and holds by capacity",
                        "ramp: the fuel total was shared out among the tanks by the type's fill order");
        assertThat(notes(SampleJet.loaded().load(new Load.ZeroFuelGiven(MassMoment.at(45_000, 17)))))
                .containsExactly(
                        "zero fuel: the zero-fuel mass and CG were taken as given; crew, zones and holds are not"
                                + " checked");
        assertThat(notes(SampleJet.loaded()
                        .load(new Load.TakeoffGiven(MassMoment.at(50_000, 17)))
                        .fuel(new Fuel.NotGiven())))
                .containsExactly("take-off: the take-off mass and CG were taken as given; crew, zones, holds, tanks,"
                        + " zero fuel, ramp, flight and landing are not checked");
        assertThat(notes(SampleJet.loaded())).isEmpty();
    }

    private static List<String> notes(SampleJet jet) {
        return check(SampleJet.type(), jet).findings().stream()
                .filter(finding -> finding.severity() == Severity.NOTE)
                .map(finding -> finding.phase().label() + ": " + finding.subject())
                .toList();
    }

    /** The mass of the first check is only close to its limit, the hold of a later one is beyond it. */
    @Test
    void aBreachFoundLateStandsBeforeAMarginalFoundEarly() {
        Policy policy = Plain.policy(0, 10, 0, 0, SharingRule.BY_CAPACITY);
        Loading loading = SampleJet.loaded()
                .hold(0, 3100)
                .hold(2, 3000)
                .tanks(4500, 4500, 0)
                .burn(0, 5000)
                .loading();
        List<Finding> found = Checker.check(loading, Balancer.balance(loading, policy), policy)
                .findings();
        assertThat(found.get(0).code()).isEqualTo(FindingCode.HOLD_MASS);
        assertThat(found.get(1).severity()).isEqualTo(Severity.MARGINAL);
        assertThat(found).extracting(Finding::severity).isSortedAccordingTo(Comparator.reverseOrder());
    }
}
