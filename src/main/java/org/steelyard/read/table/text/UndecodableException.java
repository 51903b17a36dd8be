package org.steelyard.read.table.text;

import java.io.IOException;

/** Thrown by {@link StrictReader} at bytes that are no text in its charset. */
final class UndecodableException extends IOException {

    private static final long serialVersionUID = 1L;

    private final String bytes;
    private final boolean lineBegins;

    UndecodableException(String bytes, boolean lineBegins) {
        super("undecodable bytes " + bytes);
        this.bytes = bytes;
        this.lineBegins = lineBegins;
    }

    /** The bytes in hexadecimal. */
    String bytes() {
        return bytes;
    }

    /** Whether the characters before them end a line. */
    boolean lineBegins() {
        return lineBegins;
    }
}
