package org.steelyard.read.season;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.steelyard.model.input.SourceForm;
import org.steelyard.read.heading.MapChoice;
import org.steelyard.read.loading.ItemBook;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.ReadOptions;
import org.steelyard.read.table.SeasonFolder;
import org.steelyard.read.table.SourceFault;

/** The files of load items among those of a season, read once before all others to know which flights have items. */
final class ItemFiles {

    private static final int FIRST_PASS_ROWS = 1000;

    private final ReadOptions options;
    private final Tails tails;
    private final Corrections corrections;
    private final ItemBook book = new ItemBook();
    private final Set<Path> files = new HashSet<>();
    private boolean mixed;

    private ItemFiles(ReadOptions options, Tails tails, Corrections corrections) {
        this.options = options;
        this.tails = tails;
        this.corrections = corrections;
    }

    /**
     * Reads the files of items among others, and says which flights have them where items may be read first.
     *
     * @param paths files of a season in order
     * @param options heading maps and the like; without a map of items no file is opened
     * @param tails the fleet
     * @param corrections what the season's files put right
     * @return their items; what is wrong with a row or file is said when it is read as one of the season
     */
    static ItemFiles among(List<Path> paths, ReadOptions options, Tails tails, Corrections corrections) {
        ItemFiles items = new ItemFiles(options, tails, corrections);
        if (options.maps().stream().anyMatch(map -> map.form() == SourceForm.ITEMS)) {
            paths.forEach(items::gather);
            items.lookAhead(paths);
        }
        return items;
    }

    ItemBook book() {
        return book;
    }

    /** Whether a file holds nothing but items. */
    boolean has(Path path) {
        return files.contains(path);
    }

    private void gather(Path path) {
        boolean rejected = corrections.isOfRejected(path);
        if (!rejected && !mayBeOfItems(path)) {
            return;
        }
        try (SourceFile source = SourceFile.open(path, options, tails, ItemBook.NONE, corrections)) {
            boolean ofItems = source.forms().contains(SourceForm.ITEMS);
            boolean ofFlights = source.forms().contains(SourceForm.FLIGHTS);
            mixed |= ofItems && ofFlights;
            if (ofItems && !ofFlights && !rejected) {
                files.add(path);
            }
            if (ofItems || rejected) {
                gather(source);
            }
        }
    }

    private void gather(SourceFile source) {
        source.forEachBatch(FIRST_PASS_ROWS, batch -> {
            RowReader reader = batch.reader();
            batch.rows().forEach(row -> reader.gather(row, book));
        });
    }

    /** Whether a map of items comes into question by the name of the file. */
    private boolean mayBeOfItems(Path path) {
        try {
            return MapChoice.candidates(options, SeasonFolder.nameOf(path)).stream()
                    .anyMatch(map -> map.form() == SourceForm.ITEMS);
        } catch (SourceFault e) {
            return false;
        }
    }

    /**
     * Lets flights take their items that are read after some of the items: rows put right; and all, where a workbook
     * has sheets of flights and of items.
     */
    private void lookAhead(List<Path> paths) {
        if (book.isEmpty()) {
            return;
        }
        book.lookAhead(true);
        for (Path path : paths) {
            if ((mixed && !files.contains(path)) || corrections.isOfRejected(path)) {
                try (SourceFile source = SourceFile.open(path, options, tails, book, corrections)) {
                    readThrough(source);
                }
            }
        }
        book.lookAhead(false);
    }

    /** Each row takes its items as it is read. */
    private static void readThrough(SourceFile source) {
        source.forEachBatch(FIRST_PASS_ROWS, batch -> {});
    }
}
