package org.steelyard.model.trim;

import java.util.Objects;
import org.steelyard.model.unit.Require;

/**
 * What a flap setting does to an airframe against flaps up.
 *
 * @param flaps the setting, as written in inputs
 * @param liftCoefficient increment of the lift coefficient of wing and body at a given angle of attack
 * @param momentCoefficient increment of the pitching moment coefficient of wing and body about their aerodynamic
 *     centre, nose-up positive; negative for flaps at the trailing edge, as a rule
 * @param downwashRad increment of the downwash at the tail in rad, not negative
 * @param speed take-off speed with this setting
 */
public record FlapEffect(
        String flaps, double liftCoefficient, double momentCoefficient, double downwashRad, TakeoffSpeed speed) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the setting is blank, a number is not finite, or the downwash is negative
     */
    public FlapEffect {
        Require.text("flaps", flaps);
        flaps = FlapName.of(flaps);
        Require.finite("liftCoefficient", liftCoefficient);
        Require.finite("momentCoefficient", momentCoefficient);
        Require.notNegative("downwashRad", downwashRad);
        Objects.requireNonNull(speed);
    }
}
