package org.steelyard.model.type;

import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Require;

/**
 * A pantry variation: catering and consumables carried under a code.
 *
 * @param code code used in inputs
 * @param load its mass and moment; mass not negative
 */
public record Pantry(String code, MassMoment load) {

    /** The code of an empty pantry. */
    public static final Pantry NONE = new Pantry("none", MassMoment.ZERO);

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the code is blank or the mass is negative
     */
    public Pantry {
        Require.text("pantry code", code);
        Require.notNegative("pantry massKg", load.massKg());
    }
}
