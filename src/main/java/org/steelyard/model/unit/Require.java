package org.steelyard.model.unit;

import java.util.function.Supplier;

/** Checks that the constructors of the model share: each returns or throws. */
public final class Require {

    private Require() {}

    /**
     * Requires a number that is no NaN and not infinite.
     *
     * @param name what the value is called in the message
     * @param value the value
     */
    public static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + value);
        }
    }

    /**
     * Requires a finite number of zero or more.
     *
     * @param name what the value is called in the message
     * @param value the value
     */
    public static void notNegative(String name, double value) {
        finite(name, value);
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative, not " + value);
        }
    }

    /**
     * Requires a finite number of more than zero.
     *
     * @param name what the value is called in the message
     * @param value the value
     */
    public static void positive(String name, double value) {
        finite(name, value);
        if (value <= 0) {
            throw new IllegalArgumentException(name + " must be more than zero, not " + value);
        }
    }

    /**
     * Requires a number of zero or more.
     *
     * @param name what the value is called in the message
     * @param value the value
     */
    public static void notNegative(String name, int value) {
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative, not " + value);
        }
    }

    /**
     * Requires a text that is not blank.
     *
     * @param name what the value is called in the message
     * @param value the value
     */
    public static void text(String name, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " must not be blank");
        }
    }

    /**
     * For what is checked a million times: the message is only put together if it is needed.
     *
     * @param holds whether it holds
     * @param message what to say where it does not
     */
    public static void that(boolean holds, Supplier<String> message) {
        if (!holds) {
            throw new IllegalArgumentException(message.get());
        }
    }

    /**
     * Requires that something holds.
     *
     * @param holds whether it holds
     * @param message what to say where it does not
     */
    public static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
