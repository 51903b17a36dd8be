package org.steelyard.config.value;

/** A text that its key does not accept; the scope that reads it makes a fault of it. */
public final class NotAcceptedException extends Exception {

    private static final long serialVersionUID = 1L;

    private final String expected;

    public NotAcceptedException(String reason, String expected) {
        super(reason);
        this.expected = expected;
    }

    String expected() {
        return expected;
    }
}
