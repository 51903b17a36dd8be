package org.steelyard.report.file;

import java.io.IOException;
import java.nio.file.Path;

/**
 * Complete files could not all be moved to their place. Those that are left wait, and the next run that writes into the
 * folder, or reads it back, moves them first.
 */
final class HalfMovedException extends IOException {

    private static final long serialVersionUID = 1L;

    HalfMovedException(Path folder, IOException cause) {
        super(
                "some files in " + folder + " are new and some are not yet: " + WriteFault.of(cause)
                        + ". All are complete; the next run moves the others first",
                cause);
    }
}
