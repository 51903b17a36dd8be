package org.steelyard.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.steelyard.model.AircraftType;
import org.steelyard.model.SourceForm;

/**
 * The load items of a season by flight, summed up in a first pass over the files of items. An item and a flight belong
 * together where flight, date and tail are the same, as far as the items have them. What is held grows with the flights
 * that have items and the places that these name, not with the items.
 */
public final class ItemBook {

    /** No items. */
    public static final ItemBook NONE = new ItemBook();

    private static final int FIRST_PASS_ROWS = 1000;

    private final Map<String, FlightItems> flights = new HashMap<>();
    private final Set<ItemKey> keys = new HashSet<>();
    private final Set<Path> files = new HashSet<>();
    private final ItemPlaces places = new ItemPlaces();
    private final Map<String, ItemPlan> plans = new ConcurrentHashMap<>();
    private boolean mixed;
    private boolean ahead;

    private ItemBook() {}

    /**
     * Reads the files of items among others, and says which flights have them where items may be read first.
     *
     * @param paths files of a season in order
     * @param options heading maps and the like; without a map of items no file is opened
     * @param tails the fleet
     * @param corrections what the season's files put right
     * @return their items; what is wrong with a row or file is said when it is read as one of the season
     */
    static ItemBook gather(List<Path> paths, ReadOptions options, Tails tails, Corrections corrections) {
        ItemBook book = new ItemBook();
        if (options.maps().stream().anyMatch(map -> map.form() == SourceForm.ITEMS)) {
            for (Path path : paths) {
                book.gather(path, options, tails, corrections);
            }
            book.lookAhead(paths, options, tails, corrections);
        }
        return book;
    }

    private void gather(Path path, ReadOptions options, Tails tails, Corrections corrections) {
        boolean rejected = corrections.isOfRejected(path);
        if (!rejected && !mayBeOfItems(path, options)) {
            return;
        }
        try (SourceFile source = SourceFile.open(path, options, tails, NONE, corrections)) {
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
            batch.rows().forEach(row -> reader.gather(row, this));
        });
    }

    /** Whether a map of items comes into question by the name of the file. */
    private static boolean mayBeOfItems(Path path, ReadOptions options) {
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
    private void lookAhead(List<Path> paths, ReadOptions options, Tails tails, Corrections corrections) {
        if (isEmpty()) {
            return;
        }
        ahead = true;
        for (Path path : paths) {
            if ((mixed && !files.contains(path)) || corrections.isOfRejected(path)) {
                try (SourceFile source = SourceFile.open(path, options, tails, this, corrections)) {
                    readThrough(source);
                }
            }
        }
        ahead = false;
    }

    /** Each row takes its items as it is read. */
    private static void readThrough(SourceFile source) {
        source.forEachBatch(FIRST_PASS_ROWS, batch -> {});
    }

    /** Whether rows are looked at before their turn. */
    boolean isAhead() {
        return ahead;
    }

    /** Whether a file holds nothing but items. */
    boolean isOfItems(Path path) {
        return files.contains(path);
    }

    /** Whether there are no items at all. */
    public boolean isEmpty() {
        return flights.isEmpty();
    }

    /** How many flights have items. */
    public int flights() {
        return flights.size();
    }

    /** What the places of a type are to items. */
    ItemPlan plan(AircraftType type) {
        return plans.computeIfAbsent(type.id(), id -> new ItemPlan(type));
    }

    ItemPlaces places() {
        return places;
    }

    /** The sums of a flight, made if they are not there. */
    FlightItems of(ItemKey key, String text) {
        keys.add(key);
        return flights.computeIfAbsent(text, added -> new FlightItems(places));
    }

    Optional<FlightItems> find(String key) {
        return Optional.ofNullable(flights.get(key));
    }

    /** The items of a row's flight, by every combination of columns that files of items have. */
    List<FlightItems> find(RawRow row, BoundColumns columns, Tails tails) {
        List<FlightItems> found = new ArrayList<>(1);
        for (ItemKey key : ItemKey.ALL) {
            if (keys.contains(key)) {
                key.of(row, columns, tails).flatMap(this::find).ifPresent(found::add);
            }
        }
        return found;
    }
}
