package org.steelyard.read.table.text;

import java.io.IOException;
import java.util.Iterator;
import java.util.List;

/** The rows of a table of a format that knows what its cells are. */
@FunctionalInterface
public interface TypedRows {

    /**
     * Goes through the rows from the first on; may be called several times. An iterator that can be closed is closed.
     *
     * @return for each row its cells: texts, numbers, {@code LocalDate}, {@code LocalDateTime}, or null for none
     * @throws IOException if they cannot be read
     */
    Iterator<List<Object>> iterator() throws IOException;
}
