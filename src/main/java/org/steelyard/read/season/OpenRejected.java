package org.steelyard.read.season;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.TableName;

/** A table of rejected rows that is read again: each row through the heading map that it has always had. */
final class OpenRejected implements OpenRows {

    private final RejectedTable table;
    private final PutRightReader reader;
    private final RowStream rows;

    private OpenRejected(RejectedTable table, PutRightReader reader, RowStream rows) {
        this.table = table;
        this.reader = reader;
        this.rows = rows;
    }

    static OpenRejected open(
            RejectedTable table, List<ColumnMap> maps, Tails tails, ItemBook items, Corrections corrections)
            throws SourceFault {
        return new OpenRejected(table, new PutRightReader(table, maps, tails, items, corrections), table.rows());
    }

    @Override
    public TableName name() {
        return table.name();
    }

    @Override
    public Optional<ColumnMap> map() {
        return Optional.empty();
    }

    @Override
    public List<String> headings() {
        return table.headings();
    }

    @Override
    public RowReader reader() {
        return reader;
    }

    @Override
    public Optional<RawRow> next() throws SourceFault {
        Optional<RawRow> row = rows.next();
        row.ifPresent(reader::claim);
        return row;
    }

    @Override
    public long size() {
        return rows.size();
    }

    @Override
    public List<String> notes() {
        return List.of("rows that were rejected, read again each through the heading map of its own file");
    }

    @Override
    public void close() throws IOException {
        rows.close();
    }
}
