package org.steelyard.run;

import java.io.IOException;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.season.RowReader;
import org.steelyard.read.table.RawRow;

/** A row after its worker: a flight, an item of one, a row that cannot be used, or nothing. */
sealed interface AuditedRow {

    /** Hands the row to the visitor's method for its kind. */
    void to(Visitor visitor) throws IOException;

    /** One method for each kind of row, so that none can be counted as another. */
    interface Visitor {

        void take(Flight flight) throws IOException;

        void take(Item item);

        void take(Rejected rejected) throws IOException;

        void take(Blank blank);

        void take(Skipped skipped) throws IOException;
    }

    /** A flight with all that was computed of it, and its row in case it does not stand. */
    record Flight(AuditedFlight flight, FlightKey key, RowReader reader, RawRow row) implements AuditedRow {

        @Override
        public void to(Visitor visitor) throws IOException {
            visitor.take(this);
        }
    }

    /** A row that is an item of the load of a flight. */
    record Item() implements AuditedRow {

        @Override
        public void to(Visitor visitor) {
            visitor.take(this);
        }
    }

    /** A row that is no flight. */
    record Rejected(RejectedRow row) implements AuditedRow {

        @Override
        public void to(Visitor visitor) throws IOException {
            visitor.take(this);
        }
    }

    /** A row without content. */
    record Blank() implements AuditedRow {

        @Override
        public void to(Visitor visitor) {
            visitor.take(this);
        }
    }

    /** A row that is passed over. */
    record Skipped(SkippedRow row) implements AuditedRow {

        @Override
        public void to(Visitor visitor) throws IOException {
            visitor.take(this);
        }
    }
}
