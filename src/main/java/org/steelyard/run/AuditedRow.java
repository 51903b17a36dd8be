package org.steelyard.run;

import org.steelyard.check.AuditedFlight;
import org.steelyard.model.RejectedRow;
import org.steelyard.model.SkippedRow;
import org.steelyard.read.FlightKey;
import org.steelyard.read.RawRow;
import org.steelyard.read.RowReader;

/** A row after its worker: a flight, an item of one, a row that cannot be used, or nothing. */
sealed interface AuditedRow {

    /** A flight with all that was computed of it, and its row in case it does not stand. */
    record Flight(AuditedFlight flight, FlightKey key, RowReader reader, RawRow row) implements AuditedRow {}

    /** A row that is an item of the load of a flight. */
    record Item() implements AuditedRow {}

    /** A row that is no flight. */
    record Rejected(RejectedRow row) implements AuditedRow {}

    /** A row without content. */
    record Blank() implements AuditedRow {}

    /** A row that is passed over. */
    record Skipped(SkippedRow row) implements AuditedRow {}
}
