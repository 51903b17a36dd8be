package org.steelyard.read.season;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.steelyard.model.input.ColumnMap;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.heading.HeadingSearch;
import org.steelyard.read.table.HeadingRow;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.RejectedColumns;
import org.steelyard.read.table.RowStream;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SourceFault;
import org.steelyard.read.table.Table;
import org.steelyard.read.table.text.CsvTable;
import org.steelyard.read.table.xlsx.XlsxTexts;

/**
 * The files of rejected rows among those of a season: which rows they put right, and the headings that these rows had
 * in their own files. Of several that put one row right the one rejected most often counts, and of those the last. Safe
 * for use by several threads.
 */
public final class Corrections {

    private static final Comparator<Origin> BY_ROW =
            Comparator.comparing(Origin::file).thenComparing(Origin::sheet).thenComparingLong(Origin::row);

    private static final Comparator<Source> BY_SOURCE =
            Comparator.comparing(Source::file).thenComparing(Source::sheet).thenComparing(Source::mapName);

    /** No files of rejected rows. */
    public static final Corrections NONE = new Corrections();

    private final Map<Origin, Correction> byRow = new TreeMap<>(BY_ROW);
    private final Map<Source, List<String>> headings = new TreeMap<>(BY_SOURCE);
    private final Set<Path> rejected = new LinkedHashSet<>();

    private record Source(String file, String sheet, String mapName) {}

    private Corrections() {}

    /**
     * Looks for files of rejected rows.
     *
     * @param files the files of a season
     * @param options heading maps and the like
     * @return what they put right
     */
    static Corrections in(List<Path> files, ReadOptions options) {
        Corrections corrections = new Corrections();
        Set<Source> sources = new TreeSet<>(BY_SOURCE);
        for (Path file : files) {
            if (mayBeRejected(file, options)) {
                corrections.readRejected(file, options, sources);
            }
        }
        Set<String> named = sources.stream().map(Source::file).collect(Collectors.toSet());
        for (Path file : files) {
            if (named.remove(SeasonFolder.nameOf(file))) {
                corrections.readHeadings(file, sources, options);
            }
        }
        return corrections;
    }

    private static boolean mayBeRejected(Path file, ReadOptions options) {
        try {
            return FileTables.isWorkbook(file)
                    ? XlsxTexts.mention(file, RejectedColumns.FILE)
                    : CsvTable.open(file, options).mentions(RejectedColumns.FILE);
        } catch (SourceFault | IOException e) {
            return false; // the reading of the file itself says what is wrong with it
        }
    }

    private void readRejected(Path file, ReadOptions options, Set<Source> sources) {
        try (FileTables tables = FileTables.open(file, options)) {
            for (Table table : tables.tables()) {
                Optional<RejectedTable> found = RejectedTable.in(table);
                if (found.isPresent()) {
                    rejected.add(file);
                    readRows(found.get(), sources);
                }
            }
        } catch (SourceFault e) {
            return; // the rows before the fault are known; the reading of the file itself tells of it
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private void readRows(RejectedTable table, Set<Source> sources) throws SourceFault, IOException {
        try (RowStream rows = table.rows()) {
            for (Optional<RawRow> row = rows.next(); row.isPresent(); row = rows.next()) {
                Origin place = table.name().row(row.get().number());
                table.place(row.get()).ifPresent(former -> add(former, place, sources));
            }
        }
    }

    private void add(FormerPlace former, Origin place, Set<Source> sources) {
        Origin origin = former.row().origin();
        sources.add(new Source(origin.file(), origin.sheet(), former.mapName()));
        byRow.merge(
                origin,
                new Correction(place, former.row().round(), former.row().check()),
                (one, other) -> other.round() >= one.round() ? other : one);
    }

    private void readHeadings(Path file, Set<Source> sources, ReadOptions options) {
        try (FileTables tables = FileTables.open(file, options)) {
            for (Table table : tables.tables()) {
                for (ColumnMap map : options.maps()) {
                    Source source =
                            new Source(SeasonFolder.nameOf(file), table.name().sheet(), map.name());
                    if (sources.contains(source)) {
                        headings(table, map).ifPresent(found -> headings.put(source, found));
                    }
                }
            }
        } catch (SourceFault e) {
            return; // then the headings of the file of rejected rows have to do
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static Optional<List<String>> headings(Table table, ColumnMap map) {
        try {
            return HeadingSearch.in(table, List.of(map))
                    .filter(HeadingSearch::fits)
                    .map(search -> HeadingRow.headings(search.row()));
        } catch (SourceFault e) {
            return Optional.empty(); // as above, and the next table may be sound
        }
    }

    /** Whether a file is one of rejected rows. */
    boolean isOfRejected(Path file) {
        return rejected.contains(file);
    }

    /** What puts a row right, if anything does. */
    Optional<Correction> of(Origin row) {
        return byRow.isEmpty() ? Optional.empty() : Optional.ofNullable(byRow.get(row));
    }

    /** The headings of the file that rejected rows came from, if it is among the season's. */
    Optional<List<String>> headings(FormerPlace place) {
        Origin origin = place.row().origin();
        return Optional.ofNullable(headings.get(new Source(origin.file(), origin.sheet(), place.mapName())));
    }
}
