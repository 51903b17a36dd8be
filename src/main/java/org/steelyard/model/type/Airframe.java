package org.steelyard.model.type;

import java.util.List;
import java.util.Objects;
import org.steelyard.model.trim.FlapEffect;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Require;

/**
 * What must be known of an aircraft type to estimate its trim from the balance of moments. Angles of attack are those
 * of the body's reference line; arms are from the type's datum, aft positive.
 *
 * @param typeId the type that it is for
 * @param source where the data come from, in words
 * @param wing wing and body
 * @param tail horizontal tail
 * @param thrust thrust at take-off
 * @param indicator how stabilizer angle shows on the indicator
 * @param flaps take-off flap settings, at least one
 */
public record Airframe(
        String typeId,
        String source,
        WingBody wing,
        TailPlane tail,
        Thrust thrust,
        StabilizerIndicator indicator,
        List<FlapEffect> flaps) {

    /**
     * Checks the parts.
     *
     * @throws IllegalArgumentException if the tail is not behind the wing, or there is no flap setting or one twice
     */
    public Airframe {
        Require.text("typeId", typeId);
        Require.text("source", source);
        Objects.requireNonNull(wing);
        Objects.requireNonNull(tail);
        Objects.requireNonNull(thrust);
        Objects.requireNonNull(indicator);
        flaps = List.copyOf(flaps);
        Require.that(
                tail.centreArmM() > wing.centreArmM(),
                "the tail's aerodynamic centre must lie behind the wing's; other layouts are not covered");
        Require.that(!flaps.isEmpty(), "an airframe needs at least one flap setting");
        Require.that(
                flaps.stream().map(FlapEffect::flaps).distinct().count() == flaps.size(), "each flap setting once");
    }

    /**
     * Wing and body together, flaps up.
     *
     * @param areaM2 reference area in m²
     * @param centreArmM arm of their aerodynamic centre in m
     * @param liftSlopePerRad lift-curve slope per rad, referred to the area
     * @param zeroLiftRad angle of attack at which they carry nothing, in rad
     * @param momentCoefficient pitching moment coefficient about their aerodynamic centre, nose-up positive, referred
     *     to the area and the type's chord
     */
    public record WingBody(
            double areaM2, double centreArmM, double liftSlopePerRad, double zeroLiftRad, double momentCoefficient) {

        public WingBody {
            Require.positive("areaM2", areaM2);
            Require.finite("centreArmM", centreArmM);
            Require.positive("liftSlopePerRad", liftSlopePerRad);
            Require.finite("zeroLiftRad", zeroLiftRad);
            Require.finite("momentCoefficient", momentCoefficient);
        }
    }

    /**
     * The horizontal tail. Downwash at the tail is {@code downwashRad + downwashSlope × (angle of attack - angle of
     * zero lift)}, and what flaps add.
     *
     * @param areaM2 area in m²
     * @param centreArmM arm of its aerodynamic centre in m
     * @param liftSlopePerRad lift-curve slope per rad, referred to its own area
     * @param efficiency dynamic pressure at the tail as a part of that of the free stream, more than 0, at most 1.2
     * @param downwashSlope change of downwash with angle of attack, from 0 to less than 1
     * @param downwashRad downwash where the wing carries nothing, in rad
     */
    public record TailPlane(
            double areaM2,
            double centreArmM,
            double liftSlopePerRad,
            double efficiency,
            double downwashSlope,
            double downwashRad) {

        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if one makes no sense
         */
        public TailPlane {
            Require.positive("areaM2", areaM2);
            Require.finite("centreArmM", centreArmM);
            Require.positive("liftSlopePerRad", liftSlopePerRad);
            Require.positive("efficiency", efficiency);
            Require.that(efficiency <= 1.2, "a tail efficiency of more than 1.2 makes no sense: " + efficiency);
            Require.notNegative("downwashSlope", downwashSlope);
            Require.that(downwashSlope < 1, "the downwash must grow slower than the angle of attack");
            Require.finite("downwashRad", downwashRad);
        }
    }

    /**
     * Thrust during the take-off.
     *
     * @param thrustN thrust of all engines in N, not negative
     * @param belowCgM how far its line passes below the CG in m; negative above
     */
    public record Thrust(double thrustN, double belowCgM) {

        public Thrust {
            Require.notNegative("thrustN", thrustN);
            Require.finite("belowCgM", belowCgM);
        }

        /**
         * Its moment about the CG.
         *
         * @return N·m, nose-up positive
         */
        public double momentNm() {
            return thrustN * belowCgM;
        }
    }

    /**
     * How the angle of the stabilizer shows: {@code trim = unitsPerRad × (zeroRad - angle)}, the angle being positive
     * leading edge up, which is nose-down.
     *
     * @param unit units of the indicator, or degrees
     * @param zeroRad angle of the stabilizer against the body's reference line that shows as zero, in rad
     * @param unitsPerRad units for one rad, more than zero
     * @param stepUnits smallest step of the indicator
     * @param bandLowUnits most nose-down setting permitted, nose-up positive
     * @param bandHighUnits most nose-up setting permitted
     */
    public record StabilizerIndicator(
            TrimUnit unit,
            double zeroRad,
            double unitsPerRad,
            double stepUnits,
            double bandLowUnits,
            double bandHighUnits) {

        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if one makes no sense
         */
        public StabilizerIndicator {
            Objects.requireNonNull(unit);
            Require.finite("zeroRad", zeroRad);
            Require.positive("unitsPerRad", unitsPerRad);
            Require.positive("stepUnits", stepUnits);
            Require.finite("bandLowUnits", bandLowUnits);
            Require.finite("bandHighUnits", bandHighUnits);
            Require.that(bandLowUnits < bandHighUnits, "the trim band must run from its nose-down to its nose-up end");
        }

        /**
         * What the indicator shows.
         *
         * @param stabilizerRad angle in rad, leading edge up positive
         * @return trim, nose-up positive
         */
        public double trimUnits(double stabilizerRad) {
            return unitsPerRad * (zeroRad - stabilizerRad);
        }
    }
}
