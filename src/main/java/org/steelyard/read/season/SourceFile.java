package org.steelyard.read.season;

import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.input.InputProblem;
import org.steelyard.model.input.SourceForm;
import org.steelyard.model.unit.Counted;
import org.steelyard.read.heading.MapChoice;
import org.steelyard.read.heading.TableChoice;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.FileStamp;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SeasonFolder.Skipped;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.TableName;
import org.steelyard.read.table.TextForm;
import org.steelyard.read.table.text.TypedRows;
import org.steelyard.read.table.text.TypedTable;

/**
 * One file of a season: hands out its rows in order, in batches; of a workbook those of every sheet whose headings a
 * heading map knows, flights before load items. It belongs to one reading thread; the batches may go to any other. What
 * is wrong with the file as a whole is a value too: whatever comes before a fault in the middle is still delivered.
 */
public final class SourceFile implements AutoCloseable {

    private static final String BY_ROW = "of each row";

    /** Characters and cells of a batch. */
    private static final long MOST_BATCH_SIZE = 2_000_000;

    private final TableName file;
    private final List<InputProblem> problems = new ArrayList<>();
    private final List<Skipped> skipped = new ArrayList<>();
    private final List<String> notes = new ArrayList<>();
    private final List<String> mapNames = new ArrayList<>();
    private final Set<SourceForm> forms = EnumSet.noneOf(SourceForm.class);
    private final List<Closeable> open = new ArrayList<>();
    private final Deque<Opening> waiting = new ArrayDeque<>();
    private Optional<OpenRows> first = Optional.empty();
    private Optional<OpenRows> table = Optional.empty();
    private Optional<FileStamp> stamp = Optional.empty();
    private boolean severalTables;
    private boolean lookedAbove;
    private long rows;

    /** A table that is to be read. */
    @FunctionalInterface
    private interface Opening {
        OpenRows open() throws SourceFault;
    }

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
        return open(path, options, tails, ItemBook.NONE, Corrections.NONE);
    }

    /**
     * Opens a table of a format that knows what its cells are.
     *
     * @param name name of the file
     * @param headings headings of its columns; they count as row 1
     * @param rows its rows
     * @param options heading maps and the like
     * @param tails the fleet
     * @return the file; if it cannot be read, one without rows whose problems say why
     */
    public static SourceFile ofTyped(
            String name, List<String> headings, TypedRows rows, ReadOptions options, Tails tails) {
        TableName table = new TableName(name, "");
        SourceFile source = new SourceFile(table);
        try {
            source.choose(
                    List.of(new TypedTable(table, headings, rows)), options, tails, ItemBook.NONE, Corrections.NONE);
            source.openNext();
        } catch (SourceFault e) {
            source.problems.addAll(e.problems());
        }
        return source;
    }

    /**
     * Opens a file of a season whose other files may hold load items of its flights, and rejected rows put right.
     *
     * @param path the file
     * @param options heading maps and the like
     * @param tails the fleet
     * @param items the season's load items; a file of items is to be read after all files of flights
     * @param corrections what the season's files put right
     * @return the file; if it cannot be read, one without rows whose problems say why
     */
    static SourceFile open(Path path, ReadOptions options, Tails tails, ItemBook items, Corrections corrections) {
        SourceFile source = new SourceFile(new TableName(SeasonFolder.nameOf(path), ""));
        try {
            source.start(path, options, tails, items, corrections);
        } catch (SourceFault e) {
            source.problems.addAll(e.problems());
        }
        return source;
    }

    private void start(Path path, ReadOptions options, Tails tails, ItemBook items, Corrections corrections)
            throws SourceFault {
        FileTables tables = FileTables.open(path, options);
        open.add(tables);
        skipped.addAll(tables.hidden());
        List<Table> others = new ArrayList<>();
        for (Table one : tables.tables()) {
            Optional<RejectedTable> rejected = RejectedTable.in(one);
            if (rejected.isPresent()) {
                waiting.add(() -> OpenRejected.open(rejected.get(), options.maps(), tails, items, corrections));
            } else {
                others.add(one);
            }
        }
        if (waiting.isEmpty() || !others.isEmpty()) {
            choose(others, options, tails, items, corrections);
        }
        severalTables = waiting.size() > 1;
        openNext();
    }

    private void choose(List<Table> others, ReadOptions options, Tails tails, ItemBook items, Corrections corrections)
            throws SourceFault {
        try {
            TableChoice choice = TableChoice.among(others, MapChoice.candidates(options, name()), file);
            skipped.addAll(choice.skipped());
            problems.addAll(choice.problems());
            for (TableChoice.Chosen one : choice.chosen()) {
                forms.add(one.form());
                waiting.add(() -> OpenTable.open(one.table(), one.headings(), tails, items, corrections));
            }
        } catch (SourceFault e) {
            if (waiting.isEmpty()) {
                throw e;
            }
            others.forEach(one -> skipped.add(new Skipped(
                    one.name().row(0).toString(), e.problems().get(0).reason())));
        }
    }

    /** Opens the next table that can be opened. */
    private void openNext() {
        table.ifPresent(this::finish);
        table = Optional.empty();
        while (table.isEmpty() && !waiting.isEmpty()) {
            try {
                OpenRows opened = waiting.remove().open();
                open.add(opened);
                table = Optional.of(opened);
                first = first.isPresent() ? first : table;
                rows = 0;
                String mapName = opened.map().map(ColumnMap::name).orElse(BY_ROW);
                if (!mapNames.contains(mapName)) {
                    mapNames.add(mapName);
                }
            } catch (SourceFault e) {
                problems.addAll(e.problems());
            }
        }
    }

    private void finish(OpenRows done) {
        lookedAbove |= done.lookedAbove();
        String prefix = severalTables ? "sheet '" + done.name().sheet() + "': " : "";
        if (severalTables) {
            notes.add(prefix + Counted.of(rows, "row") + ", heading map "
                    + done.map().map(map -> "'" + map.name() + "'").orElse(BY_ROW));
        }
        boolean whole = problems.stream()
                .noneMatch(
                        problem -> problem.origin().sheet().equals(done.name().sheet()));
        if (rows == 0 && whole) {
            notes.add(prefix + "there are no rows below the headings");
        }
        done.notes().forEach(note -> notes.add(prefix + note));
    }

    /** Name of the file, without its folder. */
    public String name() {
        return file.file();
    }

    /** The heading map of the first table that is read; empty if there is none. */
    public Optional<ColumnMap> map() {
        return first.flatMap(OpenRows::map);
    }

    /** How the first table is cut into cells; empty if it is no text, or there is none. */
    public Optional<TextForm> form() {
        return first.flatMap(OpenRows::form);
    }

    /**
     * Whether rows were judged by those above them, so that the file makes sense as a whole only; complete once there
     * are no more batches.
     */
    public boolean lookedAbove() {
        return lookedAbove;
    }

    /**
     * What understands the rows of each table, by the name of its sheet; there are no batches to be had afterwards.
     *
     * @return one reader for each table that can be read, in their order
     */
    public Map<String, RowReader> readers() {
        Map<String, RowReader> readers = new LinkedHashMap<>();
        while (table.isPresent()) {
            readers.put(table.get().name().sheet(), table.get().reader());
            openNext();
        }
        return readers;
    }

    /** What the rows of its tables are, rejected rows aside. */
    Set<SourceForm> forms() {
        return Set.copyOf(forms);
    }

    /** The names of the heading maps that are used, in order; complete once there are no more batches. */
    public List<String> mapNames() {
        return List.copyOf(mapNames);
    }

    /** The headings as they stand in the first table that is read; empty if none were found. */
    public List<String> headings() {
        return first.map(OpenRows::headings).orElse(List.of());
    }

    /**
     * The next rows, all of one table; fewer where rows are so long that many would fill the memory.
     *
     * @param max how many at most, at least 1
     * @return the rows in order, at least one; empty at the end of the file
     */
    public Optional<RawRows> nextBatch(int max) {
        if (max < 1) {
            throw new IllegalArgumentException("a batch has at least one row, not " + max);
        }
        while (table.isPresent()) {
            OpenRows from = table.get();
            List<RawRow> batch = new ArrayList<>();
            boolean more = fill(batch, from, max);
            rows += batch.size();
            if (!more) {
                openNext();
            }
            if (!batch.isEmpty()) {
                return Optional.of(new RawRows(from.reader(), batch));
            }
        }
        requireUnchanged();
        return Optional.empty();
    }

    /**
     * Takes rows.
     *
     * @param <E> what keeps it from going on
     */
    @FunctionalInterface
    public interface BatchConsumer<E extends Exception> {
        /**
         * Takes the next rows.
         *
         * @param rows at least one, in order, all of one table
         * @throws E if the rows after these are not to be read
         */
        void take(RawRows rows) throws E;
    }

    /**
     * Hands over all rows that are left, in order.
     *
     * @param max how many at most at a time, at least 1
     * @param consumer takes them
     * @param <E> what the consumer throws
     * @throws E if the consumer throws it
     */
    public <E extends Exception> void forEachBatch(int max, BatchConsumer<E> consumer) throws E {
        for (Optional<RawRows> rows = nextBatch(max); rows.isPresent(); rows = nextBatch(max)) {
            consumer.take(rows.get());
        }
    }

    /** The file as it was before anything of it was read, to be compared at the end. */
    void unlessChangedSince(FileStamp before) {
        stamp = Optional.of(before);
    }

    private void requireUnchanged() {
        if (stamp.filter(FileStamp::isOutdated).isPresent()) {
            problems.add(file.unreadable(
                    0,
                    "the file was written to while it was read, so its rows may be of two states",
                    "",
                    "a file that nobody writes to during the run; run it again"));
        }
        stamp = Optional.empty();
    }

    /** Reads up to so many rows; whether there may be more. */
    private boolean fill(List<RawRow> batch, OpenRows from, int max) {
        try {
            long most = from.size() + MOST_BATCH_SIZE;
            while (batch.size() < max && from.size() < most) {
                Optional<RawRow> row = from.next();
                if (row.isEmpty()) {
                    return false;
                }
                batch.add(row.get());
            }
            return true;
        } catch (SourceFault e) {
            problems.addAll(e.problems());
            return false;
        }
    }

    /** What is wrong with the file as a whole; complete once there are no more batches. */
    public List<InputProblem> problems() {
        return List.copyOf(problems);
    }

    /** The sheets that are not read, and why. */
    public List<Skipped> skipped() {
        return List.copyOf(skipped);
    }

    /** What else is to be known of the file, as columns left out; complete once there are no more batches. */
    public List<String> notes() {
        return List.copyOf(notes);
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
