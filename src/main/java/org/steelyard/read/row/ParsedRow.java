package org.steelyard.read.row;

import java.util.Objects;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.input.SkippedRow;
import org.steelyard.model.loading.Loading;

/** What became of one row. Rows seen are rows accepted (flights or load items), rejected, blank and skipped. */
public sealed interface ParsedRow
        permits ParsedRow.Accepted, ParsedRow.Item, ParsedRow.Rejected, ParsedRow.Blank, ParsedRow.Skipped {

    /**
     * Hands the row to the case of its kind.
     *
     * @param cases what to do with each kind
     * @param <T> what comes of it
     * @param <X> what doing it may throw
     * @return what the case makes of it
     * @throws X if the case does
     */
    <T, X extends Exception> T match(Cases<T, X> cases) throws X;

    /**
     * One method for each kind of row, so that whoever counts or passes rows on must say what becomes of every kind.
     *
     * @param <T> what comes of a row
     * @param <X> what doing it may throw
     */
    interface Cases<T, X extends Exception> {

        /** A flight. */
        T accepted(Loading loading) throws X;

        /** An item of a flight's load. */
        T item() throws X;

        /** A row that cannot be used. */
        T rejected(RejectedRow row) throws X;

        /** A row without content. */
        T blank() throws X;

        /** A row that is passed over. */
        T skipped(SkippedRow row) throws X;
    }

    /**
     * A row that is a loading.
     *
     * @param loading the loading
     */
    record Accepted(Loading loading) implements ParsedRow {

        public Accepted {
            Objects.requireNonNull(loading);
        }

        @Override
        public <T, X extends Exception> T match(Cases<T, X> cases) throws X {
            return cases.accepted(loading);
        }
    }

    /** A row that is an item of the load of a flight, which another row stands for. */
    record Item() implements ParsedRow {

        @Override
        public <T, X extends Exception> T match(Cases<T, X> cases) throws X {
            return cases.item();
        }
    }

    /**
     * A row that cannot be used.
     *
     * @param row its cells and every reason
     */
    record Rejected(RejectedRow row) implements ParsedRow {

        public Rejected {
            Objects.requireNonNull(row);
        }

        @Override
        public <T, X extends Exception> T match(Cases<T, X> cases) throws X {
            return cases.rejected(row);
        }
    }

    /** A row without any content. */
    record Blank() implements ParsedRow {

        @Override
        public <T, X extends Exception> T match(Cases<T, X> cases) throws X {
            return cases.blank();
        }
    }

    /**
     * A row that is passed over, as the totals at the foot of a sheet.
     *
     * @param row where it stands and why
     */
    record Skipped(SkippedRow row) implements ParsedRow {

        public Skipped {
            Objects.requireNonNull(row);
        }

        @Override
        public <T, X extends Exception> T match(Cases<T, X> cases) throws X {
            return cases.skipped(row);
        }
    }
}
