package org.steelyard.run;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.read.row.FlightKey;

/**
 * The flights that have gone by, in 36 bytes each and 7 to 13 more for finding them: digests of flight, date, tail,
 * places and cells, and where the row stands. An open hash table, in which the first entry of a flight is found by the
 * digest of flight, date and tail, and each later one, which has other places, by that of its places too. The entries
 * themselves lie in chunks, so that growing copies none of them.
 */
final class KnownFlights {

    private static final int CHUNK = 1 << 12;
    private static final int FIRST_SLOTS = 1 << 12;

    /** The table grows when more than so many of eight slots are taken. */
    private static final int TAKEN_OF_EIGHT = 5;

    private static final class Chunk {

        private final long[] high = new long[CHUNK];
        private final long[] low = new long[CHUNK];
        private final long[] content = new long[CHUNK];
        private final int[] places = new int[CHUNK];
        private final int[] table = new int[CHUNK];
        private final int[] row = new int[CHUNK];

        FlightKey key(int place) {
            return new FlightKey(high[place], low[place], places[place], content[place]);
        }

        void put(int place, FlightKey key) {
            high[place] = key.high();
            low[place] = key.low();
            places[place] = key.places();
        }

        void put(int place, FlightKey key, int tableNumber, long rowNumber) {
            content[place] = key.content();
            table[place] = tableNumber;
            row[place] = Math.toIntExact(rowNumber);
        }
    }

    private final List<Chunk> chunks = new ArrayList<>();
    private int[] slots = new int[FIRST_SLOTS];
    private int size;

    private Chunk chunk(int entry) {
        return chunks.get(entry / CHUNK);
    }

    /**
     * The first entry of the same flight; -1 if there is none. A later one of the same flight, date and tail always
     * gives places, as without them it would be the first.
     */
    int find(FlightKey key) {
        int first = first(key);
        if (first < 0 || key.isSameFlight(key(first))) {
            return first;
        }
        int mask = slots.length - 1;
        for (int slot = byPlaces(key) & mask; slots[slot] != 0; slot = slot + 1 & mask) {
            int entry = slots[slot] - 1;
            if (entry != first && key.isSameFlight(key(entry))) {
                return entry;
            }
        }
        return -1;
    }

    /** The first entry of the same flight, date and tail, whatever its places; -1 if there is none. */
    private int first(FlightKey key) {
        int mask = slots.length - 1;
        int first = -1;
        for (int slot = (int) key.low() & mask; slots[slot] != 0; slot = slot + 1 & mask) {
            int entry = slots[slot] - 1;
            Chunk chunk = chunk(entry);
            int place = entry % CHUNK;
            if (chunk.high[place] == key.high() && chunk.low[place] == key.low() && (first < 0 || entry < first)) {
                first = entry;
            }
        }
        return first;
    }

    private FlightKey key(int entry) {
        return chunk(entry).key(entry % CHUNK);
    }

    private static int byPlaces(FlightKey key) {
        return (int) key.low() ^ key.places();
    }

    /** Adds a flight and hands back its entry. */
    int add(FlightKey key, int tableNumber, long rowNumber) {
        if (size == chunks.size() * CHUNK) {
            chunks.add(new Chunk());
        }
        if ((size + 1) * 8L > (long) slots.length * TAKEN_OF_EIGHT) {
            grow();
        }
        chunk(size).put(size % CHUNK, key);
        put(size, key, tableNumber, rowNumber);
        index(size);
        return size++;
    }

    /** Lets another row stand for a flight. */
    void put(int entry, FlightKey key, int tableNumber, long rowNumber) {
        chunk(entry).put(entry % CHUNK, key, tableNumber, rowNumber);
    }

    boolean isAt(int entry, int tableNumber, long rowNumber) {
        return tableOf(entry) == tableNumber && rowOf(entry) == rowNumber;
    }

    boolean hasContent(int entry, FlightKey key) {
        return chunk(entry).content[entry % CHUNK] == key.content();
    }

    int tableOf(int entry) {
        return chunk(entry).table[entry % CHUNK];
    }

    long rowOf(int entry) {
        return chunk(entry).row[entry % CHUNK];
    }

    private void index(int entry) {
        FlightKey key = key(entry);
        int mask = slots.length - 1;
        int slot = (first(key) < 0 ? (int) key.low() : byPlaces(key)) & mask;
        while (slots[slot] != 0) {
            slot = slot + 1 & mask;
        }
        slots[slot] = entry + 1;
    }

    private void grow() {
        slots = new int[Math.multiplyExact(slots.length, 2)];
        for (int entry = 0; entry < size; entry++) {
            index(entry);
        }
    }
}
