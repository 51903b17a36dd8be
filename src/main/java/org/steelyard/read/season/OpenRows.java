package org.steelyard.read.season;

import java.io.Closeable;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;
import org.steelyard.read.table.TextForm;

/** A table whose headings are behind us: its rows come next. */
interface OpenRows extends Closeable {

    TableName name();

    /** The heading map; empty where each row has its own. */
    Optional<ColumnMap> map();

    /** The headings as they stand in the table. */
    List<String> headings();

    /** Understands the rows. */
    RowReader reader();

    /**
     * The next row; if it is a flight with load items, it has them from here on.
     *
     * @throws SourceFault if the table cannot be read on
     */
    Optional<RawRow> next() throws SourceFault;

    /** How many characters and cells have been read so far, give or take a buffer. */
    long size();

    /** How a text is cut into cells; empty for anything else. */
    default Optional<TextForm> form() {
        return Optional.empty();
    }

    /** Whether rows were judged by those above them, so that the table makes sense as a whole only. */
    default boolean lookedAbove() {
        return false;
    }

    /** What is to be known of the table; complete once there are no more rows. */
    List<String> notes();
}
