package org.steelyard.model.type;

import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.input.ColumnRule;
import org.steelyard.model.input.ColumnUnit;
import org.steelyard.model.input.Field;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.FloorLimit;
import org.steelyard.model.limit.ImbalanceLimit;
import org.steelyard.model.limit.LimitLine;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.limit.MassLimits;
import org.steelyard.model.limit.Side;
import org.steelyard.model.limit.Straightness;
import org.steelyard.model.loading.HoldLoad;
import org.steelyard.model.loading.Passengers;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.samples.Plain;

/** Values cannot be built wrong. */
class ModelRefusesTest {

    private static Arguments refused(String because, ThrowingCallable attempt) {
        return Arguments.of(because, attempt);
    }

    private static LimitLine line(Side side, double armM, double toKg) {
        return new LimitLine(side, Straightness.ARM, List.of(new LimitPoint(1000, armM), new LimitPoint(toKg, armM)));
    }

    private static Tank tank(double capacityKg, TankPoint... points) {
        return Plain.tank("t", "tank", capacityKg, List.of(points));
    }

    private static FuelStage stage(int tank, double untilKg) {
        return new FuelStage(List.of(Plain.tankShare(tank, 1, untilKg)));
    }

    private static FuelSystem system(FuelStage burn, FuelStage fill) {
        return new FuelSystem(
                List.of(tank(100, Plain.tankPoint(100, 5))), List.of(burn), List.of(fill), List.of(), 0.8);
    }

    static Stream<Arguments> attempts() {
        return Stream.of(
                refused("massKg must be a finite number", () -> new MassMoment(Double.NaN, 0)),
                refused("momentKgM must be a finite number", () -> new MassMoment(1, Double.POSITIVE_INFINITY)),
                refused("lengthM must be more than zero", () -> new MeanChord(16, 0)),
                refused("divisorKgM must be more than zero", () -> new IndexFormula(16, -1, 0)),
                refused("maximum ramp mass must not be below", () -> new MassLimits(9, 10, 8, 8, 1)),
                refused("above the minimum mass", () -> new MassLimits(10, 10, 10, 10, 10)),
                refused("at least one seat", () -> Plain.cabinZone("A", "zone A", 3, 0)),
                refused("must not be blank", () -> Plain.cabinZone(" ", "zone A", 3, 1)),
                refused("maxKg must be more than zero", () -> new Hold("1", "hold", 3, 0, Optional.empty())),
                refused(
                        "a running or an area limit",
                        () -> new FloorLimit(1, 1, OptionalDouble.empty(), OptionalDouble.empty())),
                refused("at least two places", () -> new LoadGroup("g", "group", List.of(1), List.of(), 10)),
                refused("must reach the capacity", () -> tank(200, Plain.tankPoint(100, 5))),
                refused("must rise", () -> tank(100, Plain.tankPoint(100, 5), Plain.tankPoint(100, 6))),
                refused("never empties t", () -> system(stage(0, 5), stage(0, 100))),
                refused("does not fill t", () -> system(stage(0, 0), stage(0, 50))),
                refused("tank number 1", () -> system(stage(1, 0), stage(0, 100))),
                refused(
                        "each tank once",
                        () -> new FuelStage(List.of(Plain.tankShare(0, 1, 0), Plain.tankShare(0, 2, 0)))),
                refused("between two tanks", () -> new ImbalanceLimit(1, 1, 10)),
                refused(
                        "must span the same masses",
                        () -> new Envelope(Phase.TAKEOFF, line(Side.FORWARD, 5, 2000), line(Side.AFT, 6, 2001))),
                refused(
                        "must lie ahead of the aft limit",
                        () -> new Envelope(Phase.TAKEOFF, line(Side.FORWARD, 6, 2000), line(Side.AFT, 6, 2000))),
                refused(
                        "a forward and an aft line",
                        () -> new Envelope(Phase.TAKEOFF, line(Side.AFT, 5, 2000), line(Side.FORWARD, 6, 2000))),
                refused("a CG range runs aft", () -> new CgRange(30, 20)),
                refused("must not be negative", () -> new Passengers(1, -1, 0, 0, 0)),
                refused("must not be negative", () -> new HoldLoad(-1, 0)),
                refused(
                        "cannot be in 'kg'",
                        () -> new ColumnRule(
                                "Trim", Field.RECORDED_TRIM, "", PassengerCategory.ADULT, ColumnUnit.KG, "", false)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("attempts")
    void whatMakesNoSenseIsRefusedWithItsReason(String because, ThrowingCallable attempt) {
        assertThatIllegalArgumentException().isThrownBy(attempt).withMessageContaining(because);
    }
}
