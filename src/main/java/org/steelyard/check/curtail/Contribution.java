package org.steelyard.check.curtail;

import java.util.Objects;

/**
 * What one cause takes off an envelope at one mass.
 *
 * @param cause what it is, in words
 * @param byChance whether it is a standard deviation times a factor, which is combined with others by the root of the
 *     sum of squares; otherwise it is added as it is
 * @param kgM moment in kg·m
 */
public record Contribution(String cause, boolean byChance, double kgM) {

    public Contribution {
        Objects.requireNonNull(cause);
    }
}
