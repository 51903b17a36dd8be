package org.steelyard.read.season;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.PartSlot;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.heading.BoundColumns;
import org.steelyard.read.heading.HeadingSearch;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SkipReason;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;
import org.steelyard.read.table.TextForm;

/** A table that is read through one heading map. */
final class OpenTable implements OpenRows {

    private final TableName name;
    private final Binding binding;
    private final TableReader reader;
    private final RowStream rows;
    private final NoFlights noFlights;
    private final MergedRows merged;
    private final List<String> notes;
    private final Optional<TextForm> form;
    private long formulasAbove;
    private long uncalculatedAbove;
    private long hiddenAbove;

    private OpenTable(Table table, HeadingSearch headings, TableReader reader, RowStream rows) throws SourceFault {
        this.name = table.name();
        this.binding = reader.binding();
        this.reader = reader;
        this.rows = rows;
        this.noFlights = new NoFlights(table, binding, headings.row().number());
        this.merged = new MergedRows(
                table.merged().stream()
                        .filter(area -> area.lastRow() > headings.row().number())
                        .toList(),
                binding);
        this.notes = notes(headings);
        this.form = table.form(headings.map());
    }

    static OpenTable open(Table table, HeadingSearch headings, Tails tails, ItemBook items, Corrections corrections)
            throws SourceFault {
        Binding binding = Binding.of(headings.map(), headings.row(), table.name(), table.rowsMayEndEarly());
        TableReader reader = new TableReader(table.name(), binding, tails, items, corrections);
        OpenTable opened = new OpenTable(table, headings, reader, table.rows(headings.map()));
        opened.skipTo(headings.row().number());
        return opened;
    }

    private void skipTo(long headingRow) throws SourceFault {
        Optional<RawRow> row = rows.next();
        while (row.isPresent() && row.get().number() < headingRow) {
            row = rows.next();
        }
        formulasAbove = rows.formulas();
        uncalculatedAbove = rows.uncalculated();
        hiddenAbove = rows.hiddenRows();
    }

    private List<String> notes(HeadingSearch headings) {
        List<String> all = new ArrayList<>();
        if (headings.rowsAbove() > 0) {
            all.add(headings.rowsAbove()
                    + (headings.rowsAbove() == 1 ? " filled row" : " filled rows")
                    + " above the headings in row " + headings.row().number()
                    + (headings.rowsAbove() == 1 ? " was" : " were") + " not read");
        }
        if (!binding.leftOut().isEmpty()) {
            all.add("columns left out: " + String.join(", ", binding.leftOut()));
        }
        BoundColumns columns = binding.columns();
        boolean burns = columns.has(Field.TRIP_FUEL) || columns.has(Field.FUEL) || columns.has(PartSlot.ALL_FUEL);
        if (burns && !columns.has(Field.TAXI_FUEL)) {
            all.add("there is no column for taxi fuel: it is taken as 0");
        }
        return all;
    }

    @Override
    public TableName name() {
        return name;
    }

    @Override
    public Optional<ColumnMap> map() {
        return Optional.of(binding.map());
    }

    @Override
    public List<String> headings() {
        return binding.headings();
    }

    @Override
    public RowReader reader() {
        return reader;
    }

    @Override
    public Optional<RawRow> next() throws SourceFault {
        Optional<RawRow> next = rows.next();
        if (next.isEmpty()) {
            return next;
        }
        RawRow row = next.get();
        RawRow whole = merged.apply(row);
        Optional<SkipReason> leftOut = noFlights.reason(row);
        if (leftOut.isPresent()) {
            return Optional.of(row.leftOut(leftOut.get()));
        }
        reader.claim(whole);
        return whole == row ? next : Optional.of(whole);
    }

    @Override
    public long size() {
        return rows.size();
    }

    @Override
    public Optional<TextForm> form() {
        return form;
    }

    @Override
    public boolean lookedAbove() {
        return noFlights.lookedAbove();
    }

    @Override
    public List<String> notes() {
        List<String> all = new ArrayList<>(notes);
        hidden(all);
        all.addAll(merged.notes());
        long formulas = rows.formulas() - formulasAbove;
        long without = rows.uncalculated() - uncalculatedAbove;
        if (formulas > without) {
            all.add(formulas - without + (formulas - without == 1 ? " cell holds a formula" : " cells hold formulas")
                    + "; the results stored in the file were used");
        }
        if (without > 0) {
            all.add(without + (without == 1 ? " cell holds a formula" : " cells hold formulas") + " without a result");
        }
        return all;
    }

    private void hidden(List<String> all) {
        long hiddenRows = rows.hiddenRows() - hiddenAbove;
        if (hiddenRows > 0) {
            all.add(hiddenRows + (hiddenRows == 1 ? " hidden row was" : " hidden rows were") + " read like the others");
        }
        List<String> hiddenColumns = binding.columns().all().stream()
                .filter(column -> rows.isHidden(column.index()))
                .map(BoundColumn::heading)
                .toList();
        if (!hiddenColumns.isEmpty()) {
            all.add("hidden columns were read like the others: " + String.join(", ", hiddenColumns));
        }
    }

    @Override
    public void close() throws IOException {
        try (noFlights) {
            rows.close();
        }
    }
}
