package org.steelyard.read.table.text;

import java.io.IOException;

/** Thrown by {@link StrictReader} when a record grows beyond reason. */
final class EndlessRecordException extends IOException {

    private static final long serialVersionUID = 1L;

    EndlessRecordException() {
        super("a record longer than " + StrictReader.LONGEST_RECORD + " characters");
    }
}
