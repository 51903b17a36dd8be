package org.steelyard.read.table;

import java.io.Closeable;
import java.util.Optional;

/** The rows of a table from its first on, one after the other. */
public interface RowStream extends Closeable {

    /**
     * The next row.
     *
     * @return the row, empty at the end
     * @throws SourceFault if the table cannot be read on; there are no more rows after that
     */
    Optional<RawRow> next() throws SourceFault;

    /** How many characters and cells have been read so far, give or take a buffer. */
    long size();

    /** How many formulas the rows read so far hold. */
    long formulas();

    /** How many of them have no result in the file. */
    default long uncalculated() {
        return 0;
    }

    /** How many of the filled rows read so far users do not see. */
    default long hiddenRows() {
        return 0;
    }

    /** Whether users do not see a column. */
    default boolean isHidden(int column) {
        return false;
    }
}
