package org.steelyard.report;

import java.io.IOException;
import java.io.UncheckedIOException;

/** Faults of the disk that come up where only unchecked ones can, as what they are. */
final class DiskFault {

    private DiskFault() {}

    /** What makes something. */
    @FunctionalInterface
    interface Making<T> {
        T make() throws IOException;
    }

    /** What does something. */
    @FunctionalInterface
    interface Doing {
        void run() throws IOException;
    }

    static <T> T checkedMaking(Making<T> making) throws IOException {
        try {
            return making.make();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    static void checked(Doing doing) throws IOException {
        checkedMaking(() -> {
            doing.run();
            return doing;
        });
    }
}
