package org.steelyard.run;

import java.util.Arrays;
import org.steelyard.read.FlightKey;

/**
 * The flights that have gone by, in 36 bytes each and 8 to 16 more for finding them: digests of flight, date, tail,
 * places and cells, and where the row stands. An open hash table; entries of the same key are found in the order in
 * which they came.
 */
final class KnownFlights {

    private static final int FIRST_SIZE = 1 << 10;

    private long[] high = new long[FIRST_SIZE];
    private long[] low = new long[FIRST_SIZE];
    private long[] content = new long[FIRST_SIZE];
    private int[] places = new int[FIRST_SIZE];
    private int[] table = new int[FIRST_SIZE];
    private int[] row = new int[FIRST_SIZE];
    private int[] slots = new int[2 * FIRST_SIZE];
    private int size;

    /** The first entry of the same flight; -1 if there is none. */
    int find(FlightKey key) {
        int mask = slots.length - 1;
        for (int slot = (int) key.low() & mask; slots[slot] != 0; slot = slot + 1 & mask) {
            int entry = slots[slot] - 1;
            if (key.isSameFlight(new FlightKey(high[entry], low[entry], places[entry], 0))) {
                return entry;
            }
        }
        return -1;
    }

    /** Adds a flight and hands back its entry. */
    int add(FlightKey key, int tableNumber, long rowNumber) {
        if (size == high.length) {
            grow();
        }
        high[size] = key.high();
        low[size] = key.low();
        places[size] = key.places();
        put(size, key, tableNumber, rowNumber);
        index(size);
        return size++;
    }

    /** Lets another row stand for a flight. */
    void put(int entry, FlightKey key, int tableNumber, long rowNumber) {
        content[entry] = key.content();
        table[entry] = tableNumber;
        row[entry] = Math.toIntExact(rowNumber);
    }

    boolean isAt(int entry, int tableNumber, long rowNumber) {
        return table[entry] == tableNumber && row[entry] == rowNumber;
    }

    boolean hasContent(int entry, FlightKey key) {
        return content[entry] == key.content();
    }

    int tableOf(int entry) {
        return table[entry];
    }

    long rowOf(int entry) {
        return row[entry];
    }

    private void index(int entry) {
        int mask = slots.length - 1;
        int slot = (int) low[entry] & mask;
        while (slots[slot] != 0) {
            slot = slot + 1 & mask;
        }
        slots[slot] = entry + 1;
    }

    private void grow() {
        int larger = Math.multiplyExact(size, 2);
        high = Arrays.copyOf(high, larger);
        low = Arrays.copyOf(low, larger);
        content = Arrays.copyOf(content, larger);
        places = Arrays.copyOf(places, larger);
        table = Arrays.copyOf(table, larger);
        row = Arrays.copyOf(row, larger);
        slots = new int[Math.multiplyExact(larger, 2)];
        for (int entry = 0; entry < size; entry++) {
            index(entry);
        }
    }
}
