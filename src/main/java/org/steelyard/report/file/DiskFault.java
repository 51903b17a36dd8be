package org.steelyard.report.file;

import java.io.IOException;
import java.io.UncheckedIOException;

/** Faults of the disk that come up where only unchecked ones can, as what they are. */
public final class DiskFault {

    private DiskFault() {}

    /** What makes something. */
    @FunctionalInterface
    public interface Making<T> {
        T make() throws IOException;
    }

    /** What does something. */
    @FunctionalInterface
    public interface Doing {
        void run() throws IOException;
    }

    public static <T> T checkedMaking(Making<T> making) throws IOException {
        try {
            return making.make();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    public static void checked(Doing doing) throws IOException {
        checkedMaking(() -> {
            doing.run();
            return doing;
        });
    }
}
