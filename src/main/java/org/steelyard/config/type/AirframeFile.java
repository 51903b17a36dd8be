package org.steelyard.config.type;

import java.util.List;
import java.util.Optional;
import org.steelyard.config.value.Keys;
import org.steelyard.config.value.KnownValues;
import org.steelyard.config.value.WrittenNumber;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.trim.LiftSlope;
import org.steelyard.model.trim.TakeoffSpeed;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.Airframe;
import org.steelyard.model.type.Airframe.StabilizerIndicator;
import org.steelyard.model.type.Airframe.TailPlane;
import org.steelyard.model.type.Airframe.Thrust;
import org.steelyard.model.type.Airframe.WingBody;

/**
 * Reads {@code airframes/*.yaml}: what is known of a type to estimate its trim from the balance of moments. A
 * lift-curve slope that is not given follows from the aspect ratio and the sweep, a downwash slope from the wing's
 * aspect ratio.
 */
public final class AirframeFile {

    private static final String LIFT_SLOPE = "lift-slope";
    private static final String ASPECT_RATIO = "aspect-ratio";

    private AirframeFile() {}

    public static Optional<Airframe> read(Keys keys, KnownValues<AircraftType> types) {
        Optional<AircraftType> type =
                keys.take(keys.require("airframe", types.reference()).flatMap(found -> found));
        String source = keys.text("source");
        Optional<Wing> wing = keys.part("wing", AirframeFile::wing);
        Optional<TailPlane> tail = keys.part("tail", inner -> tail(inner, wing));
        Optional<Thrust> thrust = keys.partIfAny("thrust", AirframeFile::thrust);
        Optional<StabilizerIndicator> indicator = keys.part("indicator", AirframeFile::indicator);
        List<FlapEffect> flaps = keys.each("flaps", AirframeFile::flaps);
        return keys.make(() -> new Airframe(
                type.orElseThrow().id(),
                source,
                wing.orElseThrow().body(),
                tail.orElseThrow(),
                thrust.orElse(new Thrust(0, 0)),
                indicator.orElseThrow(),
                flaps));
    }

    private record Wing(WingBody body, Optional<Double> aspectRatio) {}

    private static Optional<Wing> wing(Keys keys) {
        double areaM2 = keys.number("area", WrittenNumber.SURFACE);
        double centreArmM = keys.number("centre", WrittenNumber.ARM);
        Optional<Double> aspectRatio = keys.find(ASPECT_RATIO, WrittenNumber::positiveNumber);
        double slopePerRad = slopePerRad(keys, aspectRatio);
        double zeroLiftRad = keys.number("zero-lift", WrittenNumber.ANGLE);
        double moment = keys.number("moment", WrittenNumber::number);
        return keys.make(
                () -> new Wing(new WingBody(areaM2, centreArmM, slopePerRad, zeroLiftRad, moment), aspectRatio));
    }

    private static double slopePerRad(Keys keys, Optional<Double> aspectRatio) {
        double sweepRad = keys.find("sweep", WrittenNumber.ANGLE).orElse(0.0);
        Optional<Double> given = keys.find(LIFT_SLOPE, WrittenNumber.LIFT_SLOPE);
        if (!keys.has(LIFT_SLOPE) && !keys.has(ASPECT_RATIO)) {
            keys.faultHere("neither a lift-curve slope nor an aspect ratio", "lift-slope or aspect-ratio");
        }
        return given.orElseGet(() -> LiftSlope.perRad(aspectRatio.orElse(1.0), sweepRad, 0));
    }

    private static Optional<TailPlane> tail(Keys keys, Optional<Wing> wing) {
        double areaM2 = keys.number("area", WrittenNumber.SURFACE);
        double centreArmM = keys.number("centre", WrittenNumber.ARM);
        double slopePerRad = slopePerRad(keys, keys.find(ASPECT_RATIO, WrittenNumber::positiveNumber));
        double efficiency = keys.number("efficiency", WrittenNumber::positiveNumber);
        Optional<Double> given = keys.find("downwash-slope", WrittenNumber::number);
        double downwashRad = keys.find("downwash", WrittenNumber.ANGLE).orElse(0.0);
        Optional<Double> byWing = wing.flatMap(found -> found.aspectRatio()
                .map(ratio -> LiftSlope.downwashSlope(found.body().liftSlopePerRad(), ratio)));
        if (given.isEmpty() && byWing.isEmpty() && wing.isPresent() && !keys.has("downwash-slope")) {
            keys.faultHere(
                    "no downwash slope, and none follows without the wing's aspect ratio",
                    "downwash-slope here or aspect-ratio of the wing");
        }
        double downwashSlope = given.or(() -> byWing).orElse(0.0);
        return keys.make(() -> new TailPlane(areaM2, centreArmM, slopePerRad, efficiency, downwashSlope, downwashRad));
    }

    private static Optional<Thrust> thrust(Keys keys) {
        double thrustN = keys.number("force", WrittenNumber.FORCE);
        double belowCgM = keys.number("below-cg", WrittenNumber.ARM);
        return keys.make(() -> new Thrust(thrustN, belowCgM));
    }

    private static Optional<StabilizerIndicator> indicator(Keys keys) {
        TrimUnit unit = new TrimUnit(TrimPart.measure(keys), TrimUnit.Numbering.UP_DN);
        double zeroRad = keys.number("zero", WrittenNumber.ANGLE);
        double perDegree = keys.number("per-degree", WrittenNumber::positiveNumber);
        double stepUnits = keys.number("step", WrittenNumber::positiveNumber);
        double lowUnits = keys.number("most-nose-down", WrittenNumber::number);
        double highUnits = keys.number("most-nose-up", WrittenNumber::number);
        return keys.make(() ->
                new StabilizerIndicator(unit, zeroRad, Math.toDegrees(perDegree), stepUnits, lowUnits, highUnits));
    }

    private static Optional<FlapEffect> flaps(Keys keys) {
        String flaps = keys.text("flaps");
        double lift = keys.number("lift", WrittenNumber::number);
        double moment = keys.number("moment", WrittenNumber::number);
        double downwashRad = keys.number("downwash", WrittenNumber.ANGLE_NOT_NEGATIVE);
        Optional<TakeoffSpeed> speed = keys.take(speed(keys));
        return keys.make(() -> new FlapEffect(flaps, lift, moment, downwashRad, speed.orElseThrow()));
    }

    private static Optional<TakeoffSpeed> speed(Keys keys) {
        Optional<Double> fixed = keys.find("speed", WrittenNumber.SPEED);
        Optional<Double> factor = keys.find("over-stall", WrittenNumber::positiveNumber);
        Optional<Double> maxLift = keys.find("max-lift", WrittenNumber::positiveNumber);
        boolean isFixed = keys.has("speed") && !keys.has("over-stall") && !keys.has("max-lift");
        boolean isOverStall = !keys.has("speed") && keys.has("over-stall") && keys.has("max-lift");
        if (!isFixed && !isOverStall) {
            keys.faultHere("the take-off speed must be given in one of two ways", "speed, or over-stall with max-lift");
        }
        if (isOverStall && factor.orElse(1.0) < 1) {
            keys.faultHere("a speed below the stall carries nothing", "over-stall from 1 on");
            return Optional.empty();
        }
        Optional<TakeoffSpeed> overStall =
                factor.flatMap(times -> maxLift.map(most -> new TakeoffSpeed.OverStall(times, most)));
        return isFixed ? fixed.map(TakeoffSpeed.Fixed::new) : isOverStall ? overStall : Optional.empty();
    }
}
