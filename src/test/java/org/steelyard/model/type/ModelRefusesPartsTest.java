package org.steelyard.model.type;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatCode;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.Crew;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Fuel;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Load;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.loading.PerformanceLimits;
import org.steelyard.model.loading.ZoneLoad;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.SharingRule;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimScale;
import org.steelyard.model.trim.TrimSlope;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Amounts;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Quantity;
import org.steelyard.samples.Plain;
import org.steelyard.samples.SampleJet;

/** Each part of a value has its own refusal, and the edge of what is allowed is allowed. */
class ModelRefusesPartsTest {

    private static final double NAN = Double.NaN;
    private static final MassScheme SCHEME = scheme(88, 70, 84, 35, 0, 13, 85, 75);

    private static MassScheme scheme(
            double m, double f, double a, double c, double i, double bag, double fc, double cc) {
        return new MassScheme("s", "source", m, f, a, c, i, bag, fc, cc);
    }

    private static Arguments refused(String because, ThrowingCallable attempt) {
        return Arguments.of(because, attempt);
    }

    private static LimitLine line(double... massesAndArms) {
        List<LimitPoint> points = new ArrayList<>();
        for (int i = 0; i < massesAndArms.length; i += 2) {
            points.add(new LimitPoint(massesAndArms[i], massesAndArms[i + 1]));
        }
        return new LimitLine(Side.FORWARD, Straightness.ARM, points);
    }

    private static TrimTable table(Amounts masses, Amounts cgs, Amounts... rows) {
        return new TrimTable(masses, cgs, List.of(rows));
    }

    private static TrimScale scale(Phase phase, String flaps, double step, double low, double high) {
        TrimSlope law = new TrimSlope(new TrimPoint(25, 0), -0.1, new CgRange(10, 40));
        return Plain.trimScale(phase, flaps, "", TrimUnit.UNITS, law, step, low, high);
    }

    private static Cabin cabin(int flight, int cabin) {
        List<CrewStation> stations =
                List.of(new CrewStation("deck", CrewRole.FLIGHT, 3, 2), new CrewStation("front", CrewRole.CABIN, 5, 4));
        return new Cabin(List.of(), stations, flight, cabin, List.of(), SCHEME);
    }

    private static Policy policy(double cg, double mass, double load, double trim) {
        return Plain.policy(cg, mass, load, trim, SharingRule.BY_CAPACITY);
    }

    static Stream<Arguments> wrong() {
        Amounts two = Amounts.of(10, 20);
        return Stream.of(
                refused("amount must be a finite number", () -> Amounts.of(1, NAN)),
                refused("standard flight crew of 3", () -> cabin(3, 4)),
                refused("standard flight crew of -1", () -> cabin(-1, 4)),
                refused("standard cabin crew of 5", () -> cabin(2, 5)),
                refused("standard cabin crew of -1", () -> cabin(2, -1)),
                refused("zone name", () -> Plain.cabinZone("A", "", 3, 1)),
                refused("armM", () -> Plain.cabinZone("A", "a", NAN, 1)),
                refused("fromPercentMac", () -> new CgRange(NAN, 20)),
                refused("toPercentMac", () -> new CgRange(10, NAN)),
                refused("crew station id", () -> new CrewStation("", CrewRole.CABIN, 3, 1)),
                refused("armM", () -> new CrewStation("a", CrewRole.CABIN, NAN, 1)),
                refused("at least one seat", () -> new CrewStation("a", CrewRole.CABIN, 3, 0)),
                refused("flightCrew", () -> crew(OptionalInt.of(-1), OptionalInt.empty(), OptionalDouble.empty())),
                refused("cabinCrew", () -> crew(OptionalInt.empty(), OptionalInt.of(-1), OptionalDouble.empty())),
                refused("flightCrewKg", () -> crew(OptionalInt.empty(), OptionalInt.empty(), OptionalDouble.of(-1))),
                refused("extra column", () -> new Extra(" ", "v")),
                refused("flight", () -> new FlightIdent("", LocalDate.of(2026, 4, 1), "A", "B")),
                refused("value must be", () -> finding(NAN, 0, 0)),
                refused("limit must be", () -> finding(0, NAN, 0)),
                refused("margin must be", () -> finding(0, 0, NAN)),
                refused("floor lengthM", () -> floor(0, 1, OptionalDouble.of(1), OptionalDouble.empty())),
                refused("floor widthM", () -> floor(1, 0, OptionalDouble.of(1), OptionalDouble.empty())),
                refused("maxRunningKgPerM", () -> floor(1, 1, OptionalDouble.of(0), OptionalDouble.empty())),
                refused("maxAreaKgPerM2", () -> floor(1, 1, OptionalDouble.empty(), OptionalDouble.of(0))),
                refused("fuel in a tank", () -> new Fuel.ByTank(Amounts.of(-1), 0, 0)),
                refused("taxiKg", () -> new Fuel.ByTank(Amounts.of(1), -1, 0)),
                refused("tripKg", () -> new Fuel.ByTank(Amounts.of(1), 0, -1)),
                refused("totalKg", () -> new Fuel.Total(-1, 0, 0)),
                refused("taxiKg", () -> new Fuel.Total(1, -1, 0)),
                refused("tripKg", () -> new Fuel.Total(1, 0, -1)),
                refused("at least one tank", () -> new FuelStage(List.of())),
                refused("densityKgPerL", () -> new FuelSystem(List.of(), List.of(), List.of(), List.of(), 0)),
                refused("at least one tank", () -> new FuelSystem(List.of(), List.of(), List.of(), List.of(), 1)),
                refused("maxRampKg", () -> new MassLimits(Double.POSITIVE_INFINITY, 9, 8, 8, 1)),
                refused("bags", () -> new HoldLoad(0, -1)),
                refused("maxKg", () -> new ImbalanceLimit(0, 1, 0)),
                refused("referenceArmM", () -> new IndexFormula(NAN, 1, 0)),
                refused("constant", () -> new IndexFormula(1, 1, NAN)),
                refused("two vertices", () -> line(10, 1)),
                refused("more than two vertices", () -> line(10, 1, 20, 1, 20, 2, 20, 3, 30, 1)),
                refused("massKg", () -> new LimitPoint(0, 1)),
                refused("armM", () -> new LimitPoint(1, NAN)),
                refused("passengersKg", () -> new Load.Totals(Passengers.NONE, OptionalDouble.of(-1), HoldLoad.EMPTY)),
                refused("zero-fuel massKg", () -> new Load.ZeroFuelGiven(MassMoment.ZERO)),
                refused("take-off massKg", () -> new Load.TakeoffGiven(MassMoment.ZERO)),
                refused("group id", () -> new LoadGroup("", "g", List.of(0, 1), List.of(), 10)),
                refused("group name", () -> new LoadGroup("g", "", List.of(0, 1), List.of(), 10)),
                refused("maxKg", () -> new LoadGroup("g", "g", List.of(0, 1), List.of(), 0)),
                refused("minFlightKg", () -> new MassLimits(10, 10, 10, 10, 0)),
                refused("maximum landing mass", () -> new MassLimits(10, 9, 9.5, 8, 1)),
                refused("maximum zero-fuel mass", () -> new MassLimits(10, 9, 8, 9.5, 1)),
                refused("maximum landing mass must be above", () -> new MassLimits(10, 9, 1, 8, 1)),
                refused("leadingEdgeM", () -> new MeanChord(NAN, 1)),
                refused("lengthM", () -> MeanChord.through(10, 30, 11, 20)),
                refused("scheme id", () -> new MassScheme("", "s", 1, 1, 1, 1, 0, 1, 1, 1)),
                refused("scheme source", () -> new MassScheme("s", "", 1, 1, 1, 1, 0, 1, 1, 1)),
                refused("maleKg", () -> scheme(0, 1, 1, 1, 0, 1, 1, 1)),
                refused("femaleKg", () -> scheme(1, 0, 1, 1, 0, 1, 1, 1)),
                refused("adultKg", () -> scheme(1, 1, 0, 1, 0, 1, 1, 1)),
                refused("childKg", () -> scheme(1, 1, 1, 0, 0, 1, 1, 1)),
                refused("infantKg", () -> scheme(1, 1, 1, 1, -1, 1, 1, 1)),
                refused("bagKg", () -> scheme(1, 1, 1, 1, 0, 0, 1, 1)),
                refused("flightCrewKg", () -> scheme(1, 1, 1, 1, 0, 1, 0, 1)),
                refused("cabinCrewKg", () -> scheme(1, 1, 1, 1, 0, 1, 1, 0)),
                refused("file", () -> new Origin("", "", 1)),
                refused("rows count", () -> new Origin("f", "", -1)),
                refused("pantry code", () -> new Pantry("", MassMoment.ZERO)),
                refused("pantry massKg", () -> new Pantry("p", MassMoment.at(-1, 1))),
                refused("male", () -> new Passengers(-1, 0, 0, 0, 0)),
                refused("adult", () -> new Passengers(0, 0, -1, 0, 0)),
                refused("child", () -> new Passengers(0, 0, 0, -1, 0)),
                refused("infant", () -> new Passengers(0, 0, 0, 0, -1)),
                refused("takeoffKg", () -> new PerformanceLimits(OptionalDouble.of(0), OptionalDouble.empty())),
                refused("landingKg", () -> new PerformanceLimits(OptionalDouble.empty(), OptionalDouble.of(0))),
                refused("marginalCgPercentMac", () -> policy(-1, 0, 0, 0)),
                refused("marginalMassPercent", () -> policy(0, -1, 0, 0)),
                refused("marginalLoadPercent", () -> policy(0, 0, -1, 0)),
                refused("marginalTrimUnits", () -> policy(0, 0, 0, -1)),
                refused("tank id", () -> Plain.tank("", "t", 1, List.of(Plain.tankPoint(1, 1)))),
                refused("tank name", () -> Plain.tank("t", "", 1, List.of(Plain.tankPoint(1, 1)))),
                refused("capacityKg", () -> Plain.tank("t", "t", 0, List.of(Plain.tankPoint(1, 1)))),
                refused("at least one row", () -> Plain.tank("t", "t", 1, List.of())),
                refused("quantityKg", () -> Plain.tankPoint(0, 1)),
                refused("armM", () -> Plain.tankPoint(1, NAN)),
                refused("tank", () -> Plain.tankShare(-1, 1, 0)),
                refused("share", () -> Plain.tankShare(0, 0, 0)),
                refused("untilKg", () -> Plain.tankShare(0, 1, -1)),
                refused("cgPercentMac", () -> new TrimPoint(NAN, 1)),
                refused("trimUnits", () -> new TrimPoint(1, NAN)),
                refused("at least two points", () -> new TrimPoints(List.of(new TrimPoint(1, 1)))),
                refused(
                        "CG of a trim scale must rise",
                        () -> new TrimPoints(List.of(new TrimPoint(1, 1), new TrimPoint(1, 0)))),
                refused("take-off or landing", () -> scale(Phase.RAMP, "5", 0.1, -1, 1)),
                refused("flaps", () -> scale(Phase.TAKEOFF, "", 0.1, -1, 1)),
                refused("stepUnits", () -> scale(Phase.TAKEOFF, "5", 0, -1, 1)),
                refused("bandLowUnits", () -> scale(Phase.TAKEOFF, "5", 0.1, NAN, 1)),
                refused("bandHighUnits", () -> scale(Phase.TAKEOFF, "5", 0.1, -1, NAN)),
                refused("band must run", () -> scale(Phase.TAKEOFF, "5", 0.1, 1, 1)),
                refused("unitsPerPercentMac", () -> new TrimSlope(new TrimPoint(1, 1), NAN, new CgRange(0, 1))),
                refused("at least two masses", () -> table(Amounts.of(10), two, Amounts.of(1, 0))),
                refused("masses of a trim table must rise", () -> table(Amounts.of(10, 10), two, two, two)),
                refused("a row for each of its 2 masses", () -> table(two, two, Amounts.of(1, 0))),
                refused("a value for each of its 2 CGs", () -> table(two, two, Amounts.of(1, 0), Amounts.of(1))),
                refused("must not turn nose-up", () -> table(two, two, Amounts.of(1, 0), Amounts.of(1, 2))),
                refused("actualKg", () -> new ZoneLoad(Passengers.NONE, OptionalDouble.of(-1))),
                refused(
                        "a rejected row needs a reason",
                        () -> new RejectedRow(new Origin("f", "", 1), "", List.of(), List.of(), List.of())),
                refused(
                        "map name",
                        () -> Plain.columnMap(
                                "", List.of(), "", Optional.empty(), false, ColumnMap.UnknownColumns.KEEP, List.of())),
                refused(
                        "at least one column",
                        () -> Plain.columnMap(
                                "m",
                                List.of(),
                                "",
                                Optional.empty(),
                                false,
                                ColumnMap.UnknownColumns.KEEP,
                                List.of())));
    }

    private static Crew crew(OptionalInt flight, OptionalInt cabin, OptionalDouble kg) {
        return new Crew(flight, cabin, kg, "");
    }

    private static Finding finding(double value, double limit, double margin) {
        return new Finding(FindingCode.CG_AFT, Severity.BREACH, Phase.TAKEOFF, "s", Quantity.CG, value, limit, margin);
    }

    private static FloorLimit floor(double length, double width, OptionalDouble running, OptionalDouble area) {
        return new FloorLimit(length, width, running, area);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("wrong")
    void eachPartIsCheckedForItself(String because, ThrowingCallable attempt) {
        assertThatIllegalArgumentException().isThrownBy(attempt).withMessageContaining(because);
    }

    static Stream<ThrowingCallable> edges() {
        Amounts two = Amounts.of(10, 20);
        return Stream.of(
                () -> cabin(2, 4),
                () -> cabin(0, 0),
                () -> new CgRange(20, 20),
                () -> new MassLimits(10, 10, 10, 10, 9),
                () -> line(10, 1, 10, 2, 20, 1, 20, 2),
                () -> new Fuel.ByTank(Amounts.of(0), 0, 0),
                () -> new HoldLoad(0, 0),
                () -> new Origin("f", "", 0),
                () -> new Pantry("p", MassMoment.ZERO),
                () -> policy(0, 0, 0, 0),
                () -> Plain.tank("t", "t", 100, List.of(Plain.tankPoint(50, 1), Plain.tankPoint(100 * (1 - 5e-10), 1))),
                () -> Plain.tankShare(0, 1, 0),
                () -> new TrimPoints(List.of(new TrimPoint(1, 1), new TrimPoint(2, 1))),
                () -> new TrimSlope(new TrimPoint(1, 1), 0, new CgRange(0, 1)),
                () -> table(two, two, Amounts.of(1, 1), Amounts.of(2, 2)),
                () -> new Crew(OptionalInt.of(0), OptionalInt.of(0), OptionalDouble.of(0), ""),
                () -> new ZoneLoad(Passengers.NONE, OptionalDouble.of(0)),
                () -> scheme(1, 1, 1, 1, 0, 1, 1, 1));
    }

    @ParameterizedTest
    @MethodSource("edges")
    void theEdgeOfWhatIsAllowedIsAllowed(ThrowingCallable attempt) {
        assertThatCode(attempt).doesNotThrowAnyException();
    }

    @Test
    void theFloorCarriesTheLesserOfItsTwoLimits() {
        assertThat(floor(2, 1.5, OptionalDouble.of(100), OptionalDouble.of(60)).maxKg())
                .isEqualTo(180);
        assertThat(floor(2, 1.5, OptionalDouble.of(80), OptionalDouble.of(60)).maxKg())
                .isEqualTo(160);
        assertThat(floor(2, 1.5, OptionalDouble.empty(), OptionalDouble.of(60)).maxKg())
                .isEqualTo(180);
        assertThat(floor(2, 1.5, OptionalDouble.of(80), OptionalDouble.empty()).maxKg())
                .isEqualTo(160);
    }

    @Test
    void countsOfPassengersAddUpByCategory() {
        Passengers both = new Passengers(1, 2, 3, 4, 5).plus(new Passengers(10, 20, 30, 40, 50));
        assertThat(both).isEqualTo(new Passengers(11, 22, 33, 44, 55));
        assertThat(both.seated()).isEqualTo(110);
        assertThat(both.count(PassengerCategory.MALE)).isEqualTo(11);
        assertThat(both.count(PassengerCategory.FEMALE)).isEqualTo(22);
        assertThat(both.count(PassengerCategory.ADULT)).isEqualTo(33);
        assertThat(both.count(PassengerCategory.CHILD)).isEqualTo(44);
        assertThat(both.count(PassengerCategory.INFANT)).isEqualTo(55);
        assertThat(SCHEME.massKg(CrewRole.FLIGHT)).isEqualTo(85);
        assertThat(SCHEME.massKg(CrewRole.CABIN)).isEqualTo(75);
    }

    @Test
    void tanksHaveAMomentAtEachRowBetweenAndBeyond() {
        Tank tank = Plain.tank("t", "t", 100, List.of(Plain.tankPoint(50, 10), Plain.tankPoint(100, 11)));
        assertThat(tank.momentKgM(0)).isZero();
        assertThat(tank.momentKgM(25)).isEqualTo(250);
        assertThat(tank.momentKgM(50)).isEqualTo(500);
        assertThat(tank.momentKgM(75)).isEqualTo(800);
        assertThat(tank.momentKgM(100)).isEqualTo(1100);
        assertThat(tank.momentKgM(110)).isEqualTo(1220);
    }

    @Test
    void amountsAreAValue() {
        Amounts amounts = Amounts.of(1, 2);
        assertThat(amounts).isEqualTo(Amounts.of(1, 2)).hasSameHashCodeAs(Amounts.of(1, 2));
        assertThat(amounts).isNotEqualTo(Amounts.of(2, 1)).isNotEqualTo("[1.0, 2.0]");
        assertThat(amounts).hasToString("[1.0, 2.0]");
        assertThat(Amounts.zeros(2)).isEqualTo(Amounts.of(0, 0));
        double[] copy = amounts.toArray();
        copy[0] = 9;
        assertThat(amounts.at(0)).isEqualTo(1);
    }

    @Test
    void aLoadingMustFitItsType() {
        Loading jet = SampleJet.loaded().loading();
        Load.ByPlace load = (Load.ByPlace) jet.load();
        Fuel fuel = jet.fuel();
        Load fewZones = new Load.ByPlace(load.zones().subList(1, 3), load.holds());
        Load fewHolds = new Load.ByPlace(load.zones(), load.holds().subList(1, 3));
        Load takeoff = new Load.TakeoffGiven(MassMoment.at(50_000, 17));
        OptionalDouble none = OptionalDouble.empty();
        refusedLoading("one entry for each zone and hold of SAMPLE", jet, fewZones, fuel, none);
        refusedLoading("one entry for each zone and hold of SAMPLE", jet, fewHolds, fuel, none);
        refusedLoading("one entry for each tank of SAMPLE", jet, load, new Fuel.ByTank(Amounts.of(1), 0, 0), none);
        refusedLoading("fuel is given unless", jet, takeoff, fuel, none);
        refusedLoading("fuel is given unless", jet, load, new Fuel.NotGiven(), none);
        refusedLoading("recordedTrimUnits", jet, load, fuel, OptionalDouble.of(NAN));
    }

    private static void refusedLoading(String because, Loading jet, Load load, Fuel fuel, OptionalDouble trim) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Plain.loading(
                        jet.origin(),
                        jet.flight(),
                        jet.tail(),
                        jet.setting(),
                        jet.crew(),
                        load,
                        fuel,
                        jet.performance(),
                        trim,
                        List.of()))
                .withMessageContaining(because);
    }

    /** Each line's vertices are held against the other line: a spike of either that crosses the other is found. */
    @Test
    void anEnvelopeWhoseLinesCrossBetweenTheirEndsIsRefused() {
        List<LimitPoint> level = List.of(new LimitPoint(10, 5), new LimitPoint(30, 5));
        List<LimitPoint> behind = List.of(new LimitPoint(10, 6), new LimitPoint(30, 6));
        List<LimitPoint> aftSpike = List.of(new LimitPoint(10, 6), new LimitPoint(20, 4), new LimitPoint(30, 6));
        List<LimitPoint> forwardSpike = List.of(new LimitPoint(10, 5), new LimitPoint(20, 7), new LimitPoint(30, 5));
        refusedEnvelope(level, aftSpike);
        refusedEnvelope(forwardSpike, behind);
    }

    private static void refusedEnvelope(List<LimitPoint> forward, List<LimitPoint> aft) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Envelope(
                        Phase.TAKEOFF,
                        new LimitLine(Side.FORWARD, Straightness.ARM, forward),
                        new LimitLine(Side.AFT, Straightness.ARM, aft)))
                .withMessageContaining("must lie ahead of the aft limit");
    }

    @Test
    void aProblemNamesItsPlaceItsReasonAndWhatWasExpected() {
        Origin row = new Origin("april.csv", "", 7);
        ProblemCode code = ProblemCode.MISSING;
        assertThat(new InputProblem(row, "TOW", code, "too high", "99", "less").message())
                .isEqualTo("april.csv:7:TOW: too high (value '99'; expected less)");
        assertThat(new InputProblem(row, "", code, "odd", "", "").message()).isEqualTo("april.csv:7: odd");
        assertThat(new InputProblem(row, "TOW", code, "odd", "9", "").detail()).isEqualTo("TOW: odd (value '9')");
        assertThat(new InputProblem(row, "TOW", code, "odd", "", "a mass").detail())
                .isEqualTo("TOW: odd (expected a mass)");
        assertThat(new Origin("april.xlsx", "May", 3)).hasToString("april.xlsx[May]:3");
        assertThat(new Origin("april.csv", "", 0)).hasToString("april.csv");
    }
}
