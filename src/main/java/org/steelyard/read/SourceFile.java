package org.steelyard.read;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.InputProblem;

/**
 * One file of a season: hands out its rows in order, in batches. It belongs to one reading thread; the batches may go
 * to any other. What is wrong with the file as a whole is a value too: whatever comes before a fault in the middle is
 * still delivered.
 */
public final class SourceFile implements AutoCloseable {

    private final TableName file;
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<Closeable> open = new ArrayList<>();
    private Optional<OpenTable> table = Optional.empty();
    private long rows;
    private boolean ended;

    private SourceFile(TableName file) {
        this.file = file;
    }

    /**
     * Opens a file, chooses its heading map and binds its headings.
     *
     * @param path the file
     * @param options heading maps and the like
     * @param tails the fleet
     * @return the file; if it cannot be read, one without rows whose problems say why
     */
    public static SourceFile open(Path path, ReadOptions options, Tails tails) {
        return open(path, options, tails, ItemBook.NONE);
    }

    /**
     * Opens a file of a season whose flights may have load items in other files.
     *
     * @param path the file
     * @param options heading maps and the like
     * @param tails the fleet
     * @param items the season's load items; a file of items is to be read after all files of flights
     * @return the file; if it cannot be read, one without rows whose problems say why
     */
    public static SourceFile open(Path path, ReadOptions options, Tails tails, ItemBook items) {
        SourceFile source = new SourceFile(new TableName(SeasonFolder.nameOf(path), ""));
        try {
            List<ColumnMap> candidates = MapChoice.candidates(options, source.name());
            source.start(source.tables(path, options), candidates, tails, items);
        } catch (SourceFault e) {
            source.end(e);
        }
        return source;
    }

    private List<Table> tables(Path path, ReadOptions options) throws SourceFault {
        if (!SeasonFolder.endingOf(name()).equals("xlsx")) {
            return List.of(CsvTable.open(path, options));
        }
        XlsxFile workbook = XlsxFile.open(path);
        open.add(workbook);
        List<Table> sheets = new ArrayList<>();
        for (XlsxSheet sheet : workbook.sheets()) {
            if (sheet.hidden()) {
                notes.add("sheet '" + sheet.name().sheet() + "' was not read: it is hidden");
            } else {
                sheets.add(sheet);
            }
        }
        return sheets;
    }

    private void start(List<Table> tables, List<ColumnMap> candidates, Tails tails, ItemBook items) throws SourceFault {
        TableChoice choice = TableChoice.among(tables, candidates, file);
        notes.addAll(choice.notes());
        OpenTable opened = OpenTable.open(choice.table(), choice.headings(), tails, items);
        open.add(opened);
        notes.addAll(opened.notes());
        table = Optional.of(opened);
    }

    /** Name of the file, without its folder. */
    public String name() {
        return file.file();
    }

    /** The heading map that was chosen; empty if none could be. */
    public Optional<ColumnMap> map() {
        return table.map(OpenTable::map);
    }

    /** The headings as they stand in the file; empty if none were found. */
    public List<String> headings() {
        return table.map(OpenTable::headings).orElse(List.of());
    }

    /**
     * The next rows.
     *
     * @param max how many at most, at least 1
     * @return the rows in order, at least one; empty at the end of the file
     */
    public Optional<RawRows> nextBatch(int max) {
        if (max < 1) {
            throw new IllegalArgumentException("a batch has at least one row, not " + max);
        }
        List<RawRow> batch = new ArrayList<>();
        while (!ended && table.isPresent() && batch.size() < max) {
            read(table.get(), batch);
        }
        rows += batch.size();
        return batch.isEmpty()
                ? Optional.empty()
                : Optional.of(new RawRows(table.orElseThrow().parser(), batch));
    }

    private void read(OpenTable from, List<RawRow> batch) {
        try {
            Optional<RawRow> row = from.next();
            row.ifPresent(batch::add);
            ended = row.isEmpty();
        } catch (SourceFault e) {
            end(e);
        }
    }

    private void end(SourceFault fault) {
        problems.addAll(fault.problems());
        ended = true;
    }

    /** What is wrong with the file as a whole; complete once there are no more batches. */
    public List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    /** What else is to be known of the file, as columns left out; complete once there are no more batches. */
    public List<String> notes() {
        List<String> all = new ArrayList<>(notes);
        if (ended && problems.isEmpty() && rows == 0) {
            all.add("there are no rows below the headings");
        }
        long formulas = table.map(OpenTable::formulas).orElse(0L);
        if (formulas > 0) {
            all.add(formulas + (formulas == 1 ? " cell holds a formula" : " cells hold formulas")
                    + "; the results stored in the file were used");
        }
        return all;
    }

    @Override
    public void close() {
        try {
            for (int i = open.size() - 1; i >= 0; i--) {
                open.get(i).close();
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
