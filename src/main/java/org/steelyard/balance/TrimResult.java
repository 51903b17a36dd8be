package org.steelyard.balance;

import java.util.Objects;
import java.util.OptionalDouble;
import org.steelyard.model.trim.TrimScale;

/**
 * The stabilizer trim that one state needs.
 *
 * @param scale the scale read
 * @param trimUnits trim at full precision in units, nose-up positive; empty where the scale does not reach
 */
public record TrimResult(TrimScale scale, OptionalDouble trimUnits) {

    private static final double CLEAN = 1e6;

    public TrimResult {
        Objects.requireNonNull(scale);
        Objects.requireNonNull(trimUnits);
    }

    /**
     * The setting to select.
     *
     * @return trim rounded to the scale's step; empty where the scale does not reach
     */
    public OptionalDouble settingUnits() {
        return trimUnits.isPresent()
                ? OptionalDouble.of(scale.settingFor(trimUnits.getAsDouble()))
                : OptionalDouble.empty();
    }

    /**
     * How far a setting is from the right one.
     *
     * @param setUnits a setting in units, nose-up positive
     * @return setting less right setting, positive where it is too much nose-up, free of rounding in its last digits;
     *     empty where there is no right setting
     */
    public OptionalDouble differenceUnits(double setUnits) {
        OptionalDouble right = settingUnits();
        return right.isPresent()
                ? OptionalDouble.of(Math.round((setUnits - right.getAsDouble()) * CLEAN) / CLEAN)
                : right;
    }
}
