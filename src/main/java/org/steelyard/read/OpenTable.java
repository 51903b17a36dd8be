package org.steelyard.read;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.SourceForm;

/** A table whose headings are bound and behind us: its rows come next. */
final class OpenTable implements Closeable {

    private final Binding binding;
    private final RowReader parser;
    private final RowStream rows;
    private final List<String> notes;
    private long formulasAbove;

    private OpenTable(Binding binding, RowReader parser, RowStream rows, List<String> notes) {
        this.binding = binding;
        this.parser = parser;
        this.rows = rows;
        this.notes = notes;
    }

    static OpenTable open(Table table, HeadingSearch headings, Tails tails, ItemBook items) throws SourceFault {
        Binding binding = Binding.of(headings.map(), headings.row(), table.name(), table.rowsMayEndEarly());
        RowReader parser = binding.map().form() == SourceForm.ITEMS
                ? new ItemParser(table.name(), binding, tails, items)
                : new RowParser(table.name(), binding, tails, items);
        OpenTable opened =
                new OpenTable(binding, parser, table.rows(headings.map()), notes(binding.columns(), binding, headings));
        opened.skipTo(headings.row().number());
        return opened;
    }

    private void skipTo(long headingRow) throws SourceFault {
        Optional<RawRow> row = rows.next();
        while (row.isPresent() && row.get().number() < headingRow) {
            row = rows.next();
        }
        formulasAbove = rows.formulas();
    }

    private static List<String> notes(BoundColumns columns, Binding binding, HeadingSearch headings) {
        List<String> notes = new ArrayList<>();
        if (headings.rowsAbove() > 0) {
            notes.add(headings.rowsAbove()
                    + (headings.rowsAbove() == 1 ? " filled row" : " filled rows")
                    + " above the headings in row " + headings.row().number()
                    + (headings.rowsAbove() == 1 ? " was" : " were") + " not read");
        }
        if (!binding.leftOut().isEmpty()) {
            notes.add("columns left out: " + String.join(", ", binding.leftOut()));
        }
        boolean burns = columns.has(Slot.TRIP_FUEL) || columns.has(Slot.TANK) || columns.has(Slot.ALL_FUEL);
        if (burns && !columns.has(Slot.TAXI_FUEL)) {
            notes.add("there is no column for taxi fuel: it is taken as 0");
        }
        return notes;
    }

    ColumnMap map() {
        return binding.map();
    }

    List<String> headings() {
        return binding.headings();
    }

    RowReader parser() {
        return parser;
    }

    List<String> notes() {
        return notes;
    }

    /** The next row; if it is a flight with load items, it has them from here on. */
    Optional<RawRow> next() throws SourceFault {
        Optional<RawRow> row = rows.next();
        if (row.isPresent() && parser instanceof RowParser flights) {
            flights.claim(row.get());
        }
        return row;
    }

    long formulas() {
        return rows.formulas() - formulasAbove;
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
