package org.steelyard.read.loading;

import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.table.RawRow;

/** Turns the rows of one table into what they say, by one heading map. Safe for use by several threads. */
public sealed interface TableParser permits RowParser, ItemParser {

    /** What a row says, or every reason why it says nothing that can be used. */
    ParsedRow parse(RawRow row);

    /** Whether the cells of a row can be read, whatever other rows say. */
    boolean reads(RawRow row);

    /**
     * Sums up a load item in the first pass over them; a row of another form says nothing here.
     *
     * @param row the row
     * @param usable whether nothing else speaks against it
     * @param into where items are summed up
     */
    void gather(RawRow row, boolean usable, ItemBook into);

    /**
     * Takes the load items of a row's flight for it, in the order of the rows: an item belongs to the first flight with
     * its key. To be called by the reading thread before the row goes to a worker. A load item takes nothing.
     */
    void claim(RawRow row);
}
