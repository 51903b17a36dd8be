package org.steelyard.model.type;

import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Require;

/**
 * The type's index: a moment about a reference arm, scaled and shifted into a handy number. {@code index = mass (arm -
 * referenceArm) / divisor + constant}; with the moment M about the datum this is {@code (M - mass referenceArm) /
 * divisor + constant}. Common practice of the trade.
 *
 * @param referenceArmM reference arm in m from the datum, aft positive
 * @param divisorKgM moment in kg·m that one index unit stands for, more than zero
 * @param constant index units added so that an empty aircraft's index is positive
 */
public record IndexFormula(double referenceArmM, double divisorKgM, double constant) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the divisor is not more than zero or a number is not finite
     */
    public IndexFormula {
        Require.finite("referenceArmM", referenceArmM);
        Require.positive("divisorKgM", divisorKgM);
        Require.finite("constant", constant);
    }

    /**
     * The index of a whole aircraft, constant included.
     *
     * @param state mass and moment of the aircraft
     * @return index units
     */
    public double indexOf(MassMoment state) {
        return (state.momentKgM() - state.massKg() * referenceArmM) / divisorKgM + constant;
    }

    /**
     * What an item adds to the index, without the constant.
     *
     * @param item mass and moment of the item
     * @return index units, aft of the reference arm positive
     */
    public double influenceOf(MassMoment item) {
        return (item.momentKgM() - item.massKg() * referenceArmM) / divisorKgM;
    }

    /**
     * The inverse of {@link #indexOf}.
     *
     * @param massKg mass of the aircraft in kg
     * @param index index units, constant included
     * @return the mass with the moment that has this index
     */
    public MassMoment at(double massKg, double index) {
        return new MassMoment(massKg, (index - constant) * divisorKgM + massKg * referenceArmM);
    }
}
