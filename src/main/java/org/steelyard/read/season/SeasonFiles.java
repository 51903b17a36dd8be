package org.steelyard.read.season;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.FileStamp;
import org.steelyard.read.table.ReadOptions;

/**
 * The files of one season and what they say of each other: which rows of rejected rows put others right, and which load
 * items belong to which flights. To be read in {@link #inOrder() order}, from the first to the last as often as need
 * be, by one thread at a time.
 */
public final class SeasonFiles {

    private final List<Path> inOrder;
    private final ReadOptions options;
    private final Tails tails;
    private final Corrections corrections;
    private final ItemFiles items;
    private final Map<Path, FileStamp> stamps;

    private SeasonFiles(
            List<Path> inOrder,
            ReadOptions options,
            Tails tails,
            Corrections corrections,
            ItemFiles items,
            Map<Path, FileStamp> stamps) {
        this.inOrder = List.copyOf(inOrder);
        this.options = options;
        this.tails = tails;
        this.corrections = corrections;
        this.items = items;
        this.stamps = Map.copyOf(stamps);
    }

    /**
     * Looks through files for rejected rows and load items.
     *
     * @param files the files of a season
     * @param options heading maps and the like
     * @param tails the fleet
     * @return the files; what is wrong with one is said when it is opened
     */
    public static SeasonFiles of(List<Path> files, ReadOptions options, Tails tails) {
        Map<Path, FileStamp> stamps = new HashMap<>();
        files.forEach(file -> FileStamp.of(file).ifPresent(stamp -> stamps.put(file, stamp)));
        Corrections corrections = Corrections.in(files, options);
        List<Path> ordered = new ArrayList<>(files);
        ordered.sort(Comparator.comparing(corrections::isOfRejected));
        ItemFiles items = ItemFiles.among(ordered, options, tails, corrections);
        ordered.sort(Comparator.comparing(corrections::isOfRejected).thenComparing(items::has));
        return new SeasonFiles(ordered, options, tails, corrections, items, stamps);
    }

    /**
     * The files in the order in which they are read: those with flights, which take their load items; those of items;
     * those of rejected rows put right. Each in the order in which they were given.
     */
    public List<Path> inOrder() {
        return inOrder;
    }

    /** Whether some files hold rejected rows put right. */
    public boolean haveRejectedRows() {
        return inOrder.stream().anyMatch(corrections::isOfRejected);
    }

    /** Whether some files hold load items, which belong to flights of others. */
    public boolean haveItems() {
        return inOrder.stream().anyMatch(items::has);
    }

    /**
     * Opens one of the files.
     *
     * @param file one of the files
     * @return the file; if it cannot be read, one without rows whose problems say why
     */
    public SourceFile open(Path file) {
        SourceFile source = SourceFile.open(file, options, tails, items.book(), corrections);
        Optional.ofNullable(stamps.get(file)).ifPresent(source::unlessChangedSince);
        return source;
    }
}
