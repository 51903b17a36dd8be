package org.steelyard.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.steelyard.model.ColumnMap;
import org.steelyard.model.Origin;

/**
 * The files of rejected rows among those of a season: which rows they put right, and the headings that these rows had
 * in their own files. Of several that put one row right the one rejected most often counts, and of those the last. Safe
 * for use by several threads.
 */
public final class Corrections {

    /** No files of rejected rows. */
    public static final Corrections NONE = new Corrections(List.of());

    private final Map<Origin, Correction> byRow = new HashMap<>();
    private final Map<Source, List<String>> headings = new HashMap<>();
    private final List<Path> files;
    private final Set<Path> rejected = new LinkedHashSet<>();

    private record Source(String file, String sheet, String mapName) {}

    private Corrections(List<Path> files) {
        this.files = List.copyOf(files);
    }

    /**
     * Looks for files of rejected rows.
     *
     * @param files the files of a season
     * @param options heading maps and the like
     * @return what they put right
     */
    static Corrections in(List<Path> files, ReadOptions options) {
        Corrections corrections = new Corrections(files);
        Set<Source> sources = new LinkedHashSet<>();
        for (Path file : files) {
            if (mayBeRejected(file, options)) {
                corrections.readRejected(file, options, sources);
            }
        }
        for (Source source : sources) {
            corrections.readHeadings(source, options);
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

    private void readHeadings(Source source, ReadOptions options) {
        Optional<ColumnMap> map = options.maps().stream()
                .filter(one -> one.name().equals(source.mapName()))
                .findFirst();
        Optional<Path> file = files.stream()
                .filter(one -> SeasonFolder.nameOf(one).equals(source.file()))
                .findFirst();
        if (map.isEmpty() || file.isEmpty()) {
            return;
        }
        try (FileTables tables = FileTables.open(file.get(), options)) {
            for (Table table : tables.tables()) {
                if (table.name().sheet().equals(source.sheet())) {
                    HeadingSearch.in(table, List.of(map.get()))
                            .filter(HeadingSearch::fits)
                            .ifPresent(search -> headings.put(source, HeadingRow.headings(search.row())));
                }
            }
        } catch (SourceFault e) {
            return; // then the headings of the file of rejected rows have to do
        } catch (IOException e) {
            throw new UncheckedIOException(e);
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
