package org.steelyard.read;

import java.util.Objects;
import org.steelyard.model.Loading;
import org.steelyard.model.RejectedRow;
import org.steelyard.model.SkippedRow;

/** What became of one row. Rows seen are rows accepted (flights or load items), rejected, blank and skipped. */
public sealed interface ParsedRow
        permits ParsedRow.Accepted, ParsedRow.Item, ParsedRow.Rejected, ParsedRow.Blank, ParsedRow.Skipped {

    /**
     * A row that is a loading.
     *
     * @param loading the loading
     */
    record Accepted(Loading loading) implements ParsedRow {

        /** Checks that it is there. */
        public Accepted {
            Objects.requireNonNull(loading);
        }
    }

    /** A row that is an item of the load of a flight, which another row stands for. */
    record Item() implements ParsedRow {}

    /**
     * A row that cannot be used.
     *
     * @param row its cells and every reason
     */
    record Rejected(RejectedRow row) implements ParsedRow {

        /** Checks that it is there. */
        public Rejected {
            Objects.requireNonNull(row);
        }
    }

    /** A row without any content. */
    record Blank() implements ParsedRow {}

    /**
     * A row that is passed over, as the totals at the foot of a sheet.
     *
     * @param row where it stands and why
     */
    record Skipped(SkippedRow row) implements ParsedRow {

        /** Checks that it is there. */
        public Skipped {
            Objects.requireNonNull(row);
        }
    }
}
