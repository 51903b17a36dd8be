package org.steelyard.report.type;

import java.util.List;
import java.util.Objects;

/**
 * A table of what an aircraft type is, in the units of its users: for the terminal and for the page.
 *
 * @param title what it shows
 * @param headings names of its columns; one over numbers begins with {@code #}
 * @param rows cells, as many in each row as headings
 * @param note a sentence below it; blank where there is nothing to say
 */
public record TypeTable(String title, List<String> headings, List<List<String>> rows, String note) {

    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if a row has more or fewer cells than there are headings
     */
    public TypeTable {
        Objects.requireNonNull(title);
        Objects.requireNonNull(note);
        headings = List.copyOf(headings);
        rows = rows.stream().map(List::copyOf).toList();
        for (List<String> row : rows) {
            if (row.size() != headings.size()) {
                throw new IllegalArgumentException(title + ": " + row + " does not fit " + headings);
            }
        }
    }
}
