package org.steelyard.trim;

import java.util.Objects;
import java.util.OptionalDouble;

/**
 * One recorded pair of CG and setting.
 *
 * @param label where it comes from, in words: a flight, or a row of a file
 * @param cgPercentMac CG in % MAC
 * @param massKg take-off mass in kg, if it is known
 * @param settingUnits the setting that was recorded, in units, nose-up positive
 */
public record TrimEvidence(String label, double cgPercentMac, OptionalDouble massKg, double settingUnits) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public TrimEvidence {
        Objects.requireNonNull(label);
        boolean finite = Double.isFinite(cgPercentMac) && Double.isFinite(settingUnits);
        if (!finite || (massKg.isPresent() && !Double.isFinite(massKg.getAsDouble()))) {
            throw new IllegalArgumentException("a pair of CG and setting must be of finite numbers: " + label);
        }
    }
}
