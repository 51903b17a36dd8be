package org.steelyard.report.file;

import java.io.IOException;
import java.nio.file.Path;

/** A list of files to move that no run of this program wrote. */
final class ForeignListException extends IOException {

    private static final long serialVersionUID = 1L;

    private final String why;

    ForeignListException(Path list, String why) {
        super(list + " was not written by this program: " + why);
        this.why = why;
    }

    /** What shows it, as a clause. */
    String why() {
        return why;
    }
}
