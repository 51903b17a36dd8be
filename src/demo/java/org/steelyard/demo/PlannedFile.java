package org.steelyard.demo;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.ColumnRule;

/**
 * A file of the season before it is written.
 *
 * @param name its name
 * @param style what kind of file
 * @param map its heading map
 * @param entries its rows in their order
 */
record PlannedFile(String name, Style style, ColumnMap map, List<Entry> entries) {

    /** A title stands above the headings of the ledger. */
    private static final int ROWS_ABOVE_LEDGER = 2;

    private static final int CELLS_OF_A_SHORT_ROW = 7;

    PlannedFile {
        entries = List.copyOf(entries);
    }

    static PlannedFile inOrder(String name, Style style, ColumnMap map, List<Entry> entries) {
        List<Entry> ordered = new ArrayList<>(entries);
        ordered.sort(Comparator.comparing(Entry::date).thenComparing(Entry::flight));
        return new PlannedFile(name, style, map, ordered);
    }

    /** The number of a row as a person counts, from 1, headings and title included. */
    int rowNumber(int position) {
        return position + 1 + (style == Style.LEDGER ? ROWS_ABOVE_LEDGER : 1);
    }

    List<String> headings() {
        return map.columns().stream().map(ColumnRule::heading).toList();
    }

    /** The cells of an entry, one for each heading unless the row is meant not to fit. */
    List<Optional<Cell>> cells(Entry entry) {
        List<Optional<Cell>> cells = new ArrayList<>();
        for (ColumnRule rule : map.columns()) {
            cells.add(entry.row().cell(Meaning.of(rule)));
        }
        return switch (entry.shape()) {
            case FITTING -> cells;
            case SHORT -> cells.subList(0, CELLS_OF_A_SHORT_ROW);
            case LONG -> {
                cells.add(Optional.of(new Cell.Text("?")));
                yield cells;
            }
            case BLANK -> cells.stream().map(cell -> Optional.<Cell>empty()).toList();
        };
    }
}
