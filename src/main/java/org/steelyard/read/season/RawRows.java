package org.steelyard.read.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.steelyard.read.row.ParsedRow;
import org.steelyard.read.table.RawRow;

/**
 * Rows that follow each other in a source, together with what understands them: what the reading thread hands to a
 * worker.
 *
 * @param reader understands the rows; safe for use by several threads
 * @param rows rows in the order of the source
 */
public record RawRows(RowReader reader, List<RawRow> rows) {

    public RawRows {
        Objects.requireNonNull(reader);
        rows = List.copyOf(rows);
    }

    /**
     * The rows of a piece of a file that stands behind the head of that file, by their places in the whole.
     *
     * @param headRows how many rows the head has; these are left out
     * @param before how many rows of the whole file stand between its head and the piece
     * @return the rows of the piece; there may be none
     */
    public RawRows ofPiece(long headRows, long before) {
        return new RawRows(
                reader,
                rows.stream()
                        .filter(row -> row.number() > headRows)
                        .map(row -> row.farther(before))
                        .toList());
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
