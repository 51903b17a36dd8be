package org.steelyard.read.table.text;

import java.io.Closeable;
import java.io.IOException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;

/** A table of a format that knows what its cells are. Its headings count as row 1. */
public final class TypedTable implements Table {

    private final TableName name;
    private final List<String> headings;
    private final TypedRows rows;

    public TypedTable(TableName name, List<String> headings, TypedRows rows) {
        this.name = name;
        this.headings = List.copyOf(headings);
        this.rows = rows;
    }

    @Override
    public TableName name() {
        return name;
    }

    @Override
    public boolean rowsMayEndEarly() {
        return true;
    }

    @Override
    public List<RawRow> head(ColumnMap map) throws SourceFault {
        List<RawRow> head = new ArrayList<>();
        try (RowStream stream = rows(map)) {
            for (Optional<RawRow> row = stream.next(); row.isPresent(); row = stream.next()) {
                if (!row.get().isBlank()) {
                    head.add(row.get());
                }
                if (head.size() == HEAD_ROWS) {
                    break;
                }
            }
        } catch (IOException e) {
            throw unreadable(0, e);
        }
        return head;
    }

    private SourceFault unreadable(long row, IOException e) {
        return new SourceFault(name.unreadable(row, "the file cannot be read on", "", "a file that may be read"), e);
    }

    @Override
    public RowStream rows(ColumnMap map) throws SourceFault {
        try {
            return new Stream(rows.iterator());
        } catch (IOException e) {
            throw unreadable(0, e);
        }
    }

    private final class Stream implements RowStream {

        private final Iterator<List<Object>> all;
        private long number;
        private long size;

        Stream(Iterator<List<Object>> all) {
            this.all = all;
        }

        @Override
        public Optional<RawRow> next() throws SourceFault {
            number++;
            if (number == 1) {
                CellKind[] kinds = new CellKind[headings.size()];
                Arrays.fill(kinds, CellKind.TEXT);
                return Optional.of(RawRow.of(1, headings.toArray(String[]::new), kinds));
            }
            try {
                return all.hasNext() ? Optional.of(row(all.next())) : Optional.empty();
            } catch (java.io.UncheckedIOException e) {
                throw unreadable(number, e.getCause());
            }
        }

        private RawRow row(List<Object> values) {
            String[] cells = new String[values.size()];
            CellKind[] kinds = new CellKind[cells.length];
            for (int i = 0; i < cells.length; i++) {
                Object value = values.get(i);
                cells[i] = text(value);
                size += cells[i].length() + 1;
                kinds[i] = value instanceof Number
                        ? CellKind.NUMBER
                        : value instanceof LocalDate || value instanceof LocalDateTime ? CellKind.DATE : CellKind.TEXT;
            }
            return RawRow.of(number, cells, kinds);
        }

        private static String text(Object value) {
            if (value == null) {
                return "";
            }
            if (value instanceof Double number && number == Math.rint(number) && Math.abs(number) < 1e15) {
                return Long.toString(number.longValue());
            }
            return value instanceof LocalDateTime time
                    ? DateTimeFormatter.ISO_LOCAL_DATE_TIME.format(time)
                    : value.toString();
        }

        @Override
        public long size() {
            return size;
        }

        @Override
        public long formulas() {
            return 0;
        }

        @Override
        public void close() throws IOException {
            if (all instanceof Closeable closeable) {
                closeable.close();
            }
        }
    }
}
