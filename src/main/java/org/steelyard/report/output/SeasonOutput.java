package org.steelyard.report.output;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.report.text.Work;

/**
 * One file of a season's reports: takes flights and rejected rows in order and is complete after {@link #finish}.
 *
 * <p>Flights come in batches and in three steps, so that several threads can share the work and the bytes stay the
 * same: {@link #begin} in order, {@link Work#make} by any thread, {@link Work.Addition#add} in order again. An output
 * that has little to do overrides {@link #flight} alone.
 */
public interface SeasonOutput extends Closeable {

    /** Takes the next flights: keeps a place for them and says what is to be done. */
    default Work begin(List<AuditedFlight> flights) throws IOException {
        return () -> () -> {
            for (AuditedFlight flight : flights) {
                flight(flight);
            }
        };
    }

    default void flight(AuditedFlight flight) throws IOException {}

    default void rejected(RejectedRow row) throws IOException {}

    default void skipped(SkippedRow row) throws IOException {}

    /** Writes what is left; all of the file is on disk afterwards. */
    void finish(SeasonResult result) throws IOException;

    /** Lets go of the file, finished or not. */
    @Override
    default void close() throws IOException {}
}
