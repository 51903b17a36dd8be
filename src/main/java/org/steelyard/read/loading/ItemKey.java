package org.steelyard.read.loading;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.Slot;
import org.steelyard.model.type.Tail;
import org.steelyard.read.heading.BoundColumns;
import org.steelyard.read.row.CellParser;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;

/**
 * By what an item and its flight find each other: the flight, and the date and the tail where the items have them.
 *
 * @param byDate whether the date counts
 * @param byTail whether the tail counts
 */
record ItemKey(boolean byDate, boolean byTail) {

    /** All combinations, the most columns first. */
    static final List<ItemKey> ALL = List.of(
            new ItemKey(true, true), new ItemKey(true, false), new ItemKey(false, true), new ItemKey(false, false));

    /** The key of the items of a table. */
    static ItemKey ofItems(BoundColumns columns) {
        return new ItemKey(columns.has(Field.DATE), columns.has(Field.TAIL));
    }

    /** The key of a row as one text; empty where a column is missing, blank or not readable. */
    Optional<String> of(RawRow row, BoundColumns columns, Tails tails) {
        List<String> parts = new ArrayList<>();
        parts.add(byDate + "," + byTail);
        flight(row, columns).ifPresent(parts::add);
        if (byDate) {
            date(row, columns).ifPresent(day -> parts.add(day.toString()));
        }
        if (byTail) {
            tail(row, columns, tails).ifPresent(parts::add);
        }
        int wanted = 2 + (byDate ? 1 : 0) + (byTail ? 1 : 0);
        return parts.size() == wanted ? Optional.of(String.join("\n", parts)) : Optional.empty();
    }

    /** The cell of a row under the first column of a slot; empty if it is blank or there is none. */
    static Optional<String> text(RawRow row, BoundColumns columns, Slot slot) {
        return columns.first(slot)
                .map(column -> Blanks.strip(row.cell(column.index())))
                .filter(text -> !text.isEmpty());
    }

    private static Optional<String> flight(RawRow row, BoundColumns columns) {
        return text(row, columns, Field.FLIGHT).map(Blanks::fold);
    }

    /** The date of a row; empty if it cannot be read. */
    static Optional<LocalDate> date(RawRow row, BoundColumns columns) {
        return columns.first(Field.DATE).flatMap(column -> {
            String text = Blanks.strip(row.cell(column.index()));
            return row.kind(column.index()) == CellKind.DATE
                    ? CellParser.storedDate(text)
                    : column.dates().orElseThrow().parse(text);
        });
    }

    private static Optional<String> tail(RawRow row, BoundColumns columns, Tails tails) {
        return text(row, columns, Field.TAIL).flatMap(text -> tails.find(text).map(Tail::registration));
    }

    /** What the key is made of, in words. */
    String columns() {
        return "flight" + (byDate ? byTail ? ", date and tail" : " and date" : byTail ? " and tail" : "");
    }
}
