package org.steelyard.model;

import java.util.function.Supplier;

/** Checks that the constructors of the model share: each returns or throws. */
final class Require {

    private Require() {}

    static void finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + value);
        }
    }

    static void notNegative(String name, double value) {
        finite(name, value);
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative, not " + value);
        }
    }

    static void positive(String name, double value) {
        finite(name, value);
        if (value <= 0) {
            throw new IllegalArgumentException(name + " must be more than zero, not " + value);
        }
    }

    static void notNegative(String name, int value) {
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative, not " + value);
        }
    }

    static void text(String name, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " must not be blank");
        }
    }

    /** For what is checked a million times: the message is only put together if it is needed. */
    static void that(boolean holds, Supplier<String> message) {
        if (!holds) {
            throw new IllegalArgumentException(message.get());
        }
    }

    static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
