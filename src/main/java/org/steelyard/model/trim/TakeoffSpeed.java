package org.steelyard.model.trim;

import org.steelyard.model.unit.Require;

/** The equivalent airspeed for which trim is wanted: a fixed one, or a factor on the stalling speed. */
public sealed interface TakeoffSpeed permits TakeoffSpeed.Fixed, TakeoffSpeed.OverStall {

    /**
     * The dynamic pressure at that speed.
     *
     * @param liftN lift that carries the aircraft, in N
     * @param wingAreaM2 reference area in m²
     * @return pressure in Pa
     */
    double dynamicPressurePa(double liftN, double wingAreaM2);

    /**
     * One speed at every mass.
     *
     * @param metresPerSecond equivalent airspeed in m/s, more than zero
     */
    record Fixed(double metresPerSecond) implements TakeoffSpeed {

        /** Density of the standard atmosphere at sea level, kg/m³ (ISO 2533). */
        private static final double SEA_LEVEL_KG_PER_M3 = 1.225;

        public Fixed {
            Require.positive("metresPerSecond", metresPerSecond);
        }

        @Override
        public double dynamicPressurePa(double liftN, double wingAreaM2) {
            return SEA_LEVEL_KG_PER_M3 / 2 * metresPerSecond * metresPerSecond;
        }
    }

    /**
     * A factor on the stalling speed at the mass: {@code q = factor² lift / (area CLmax)}.
     *
     * @param factor factor on the stalling speed, at least 1
     * @param maxLiftCoefficient greatest lift coefficient with the flap setting, more than zero
     */
    record OverStall(double factor, double maxLiftCoefficient) implements TakeoffSpeed {

        /**
         * Checks the numbers.
         *
         * @throws IllegalArgumentException if the factor is below 1 or the coefficient not more than zero
         */
        public OverStall {
            Require.finite("factor", factor);
            Require.that(factor >= 1, "a speed below the stall carries nothing");
            Require.positive("maxLiftCoefficient", maxLiftCoefficient);
        }

        @Override
        public double dynamicPressurePa(double liftN, double wingAreaM2) {
            return factor * factor * liftN / (wingAreaM2 * maxLiftCoefficient);
        }
    }
}
