package org.steelyard.run;

import org.steelyard.check.AuditedFlight;
import org.steelyard.model.RejectedRow;

/** A row after its worker: a flight, an item of one, a row that cannot be used, or nothing. */
sealed interface AuditedRow {

    /** A flight with all that was computed of it. */
    record Flight(AuditedFlight flight) implements AuditedRow {}

    /** A row that is an item of the load of a flight. */
    record Item() implements AuditedRow {}

    /** A row that is no flight. */
    record Rejected(RejectedRow row) implements AuditedRow {}

    /** A row without content. */
    record Blank() implements AuditedRow {}
}
