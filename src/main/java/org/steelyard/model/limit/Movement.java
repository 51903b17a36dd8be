package org.steelyard.model.limit;

import org.steelyard.model.unit.Require;

/**
 * Something that moves in a way that no load sheet shows, as landing gear, flaps or people in the cabin, given as the
 * moment that it may bring.
 *
 * @param name what moves, in words
 * @param forwardKgM greatest moment forward in kg·m, not negative
 * @param aftKgM greatest moment aft in kg·m, not negative
 * @param inFlightOnly whether it moves between take-off and landing only
 * @param needsPassengers whether it does not happen without passengers
 */
public record Movement(String name, double forwardKgM, double aftKgM, boolean inFlightOnly, boolean needsPassengers) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if the name is blank or a moment negative
     */
    public Movement {
        Require.text("movement name", name);
        Require.notNegative("forwardKgM", forwardKgM);
        Require.notNegative("aftKgM", aftKgM);
    }

    /**
     * The moment to one side.
     *
     * @param side forward or aft
     * @return in kg·m, not negative
     */
    public double kgM(Side side) {
        return side == Side.FORWARD ? forwardKgM : aftKgM;
    }
}
