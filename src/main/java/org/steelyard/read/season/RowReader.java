package org.steelyard.read.season;

import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.RejectedRow;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.FlightKey;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.table.RawRow;

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
