package org.steelyard.report;

import java.io.Closeable;
import java.io.IOException;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.RejectedRow;
import org.steelyard.model.SkippedRow;

/** One file of a season's reports: takes flights and rejected rows in order and is complete after {@link #finish}. */
interface SeasonOutput extends Closeable {

    default void flight(AuditedFlight flight) throws IOException {}

    default void rejected(RejectedRow row) throws IOException {}

    default void skipped(SkippedRow row) throws IOException {}

    /** Writes what is left; all of the file is on disk afterwards. */
    void finish(SeasonResult result) throws IOException;

    /** Lets go of the file, finished or not. */
    @Override
    default void close() throws IOException {}
}
