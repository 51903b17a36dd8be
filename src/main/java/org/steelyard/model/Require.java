package org.steelyard.model;

/** Checks that the constructors of the model share: each returns its argument or throws. */
final class Require {

    private Require() {}

    static double finite(String name, double value) {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException(name + " must be a finite number, not " + value);
        }
        return value;
    }

    static double notNegative(String name, double value) {
        if (!(finite(name, value) >= 0)) {
            throw new IllegalArgumentException(name + " must not be negative, not " + value);
        }
        return value;
    }

    static double positive(String name, double value) {
        if (!(finite(name, value) > 0)) {
            throw new IllegalArgumentException(name + " must be more than zero, not " + value);
        }
        return value;
    }

    static int notNegative(String name, int value) {
        if (value < 0) {
            throw new IllegalArgumentException(name + " must not be negative, not " + value);
        }
        return value;
    }

    static String text(String name, String value) {
        if (value.isBlank()) {
            throw new IllegalArgumentException(name + " must not be blank");
        }
        return value;
    }

    static void that(boolean holds, String message) {
        if (!holds) {
            throw new IllegalArgumentException(message);
        }
    }
}
