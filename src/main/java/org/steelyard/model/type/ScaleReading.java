package org.steelyard.model.type;

import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Require;

/**
 * What one scale shows at a weighing.
 *
 * @param place the wheel or jacking point on it, as nose
 * @param readingKg what the scale shows in kg, not negative
 * @param tareKg what of it is not the aircraft in kg: chocks, jacks, pads; not negative
 * @param armM arm of the point in m from the datum, aft positive
 */
public record ScaleReading(String place, double readingKg, double tareKg, double armM) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the place is blank, a mass is negative or the arm is not finite
     */
    public ScaleReading {
        Require.text("weighing point", place);
        Require.notNegative("readingKg", readingKg);
        Require.notNegative("tareKg", tareKg);
        Require.finite("armM", armM);
    }

    /**
     * What the point carries.
     *
     * @return reading less tare, at the point's arm
     */
    public MassMoment net() {
        return MassMoment.at(readingKg - tareKg, armM);
    }
}
