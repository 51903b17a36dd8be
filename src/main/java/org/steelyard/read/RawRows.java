package org.steelyard.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/**
 * Rows that follow each other in a source, together with what understands them: what the reading thread hands to a
 * worker.
 *
 * @param reader understands the rows; safe for use by several threads
 * @param rows rows in the order of the source
 */
public record RawRows(RowReader reader, List<RawRow> rows) {

    /** Copies the list. */
    public RawRows {
        Objects.requireNonNull(reader);
        rows = List.copyOf(rows);
    }

    /** Turns every row into what it says, in the same order. */
    public List<ParsedRow> parse() {
        List<ParsedRow> parsed = new ArrayList<>(rows.size());
        for (RawRow row : rows) {
            parsed.add(reader.parse(row));
        }
        return parsed;
    }
}
