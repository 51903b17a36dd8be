package org.steelyard.read.loading;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.steelyard.model.type.AircraftType;
import org.steelyard.read.heading.BoundColumns;
import org.steelyard.read.row.Tails;
import org.steelyard.read.table.RawRow;

/**
 * The load items of a season by flight, summed up in a first pass over the files of items. An item and a flight belong
 * together where flight, date and tail are the same, as far as the items have them. What is held grows with the flights
 * that have items and the places that these name, not with the items.
 */
public final class ItemBook {

    /** No items. */
    public static final ItemBook NONE = new ItemBook();

    private final Map<String, FlightItems> flights = new HashMap<>();
    private final Set<ItemKey> keys = new HashSet<>();
    private final ItemPlaces places = new ItemPlaces();
    private final Map<String, ItemPlan> plans = new ConcurrentHashMap<>();
    private boolean ahead;

    public ItemBook() {}

    /** Says whether rows are now looked at before their turn. */
    public void lookAhead(boolean beforeTheirTurn) {
        ahead = beforeTheirTurn;
    }

    /** Whether rows are looked at before their turn. */
    boolean isAhead() {
        return ahead;
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
