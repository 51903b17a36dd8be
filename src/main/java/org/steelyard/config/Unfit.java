package org.steelyard.config;

/** A text that its key does not accept; the scope that reads it makes a fault of it. */
final class Unfit extends Exception {

    private static final long serialVersionUID = 1L;

    private final String expected;

    Unfit(String reason, String expected) {
        super(reason);
        this.expected = expected;
    }

    String expected() {
        return expected;
    }
}
