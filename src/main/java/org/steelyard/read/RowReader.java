package org.steelyard.read;

import org.steelyard.model.InputProblem;
import org.steelyard.model.Loading;
import org.steelyard.model.Origin;
import org.steelyard.model.RejectedRow;

/** Understands the rows of one table. Safe for use by several threads. */
public sealed interface RowReader permits TableReader, PutRightReader {

    /** What a row says: a loading, a load item, every reason why it is none, nothing, or that it is passed over. */
    ParsedRow parse(RawRow row);

    /** Where a row stands. */
    Origin origin(RawRow row);

    /** By what the flight of a row is known again, and its cells. */
    FlightKey key(RawRow row, Loading loading);

    /** The row as one that cannot be used after all. */
    RejectedRow reject(RawRow row, InputProblem problem);

    /** Sums up a load item in the first pass over them; any other row says nothing here. */
    void gather(RawRow row, ItemBook into);
}
