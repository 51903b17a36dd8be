package org.steelyard.read.loading;

import java.util.Arrays;
import java.util.Optional;
import org.steelyard.model.loading.Origin;

/**
 * The load items of one flight, those of one place, kind and measure summed up: 20 bytes for each such sum and some 200
 * for the flight, however many items there are. Filled in a first pass over the files of items by one thread; read by
 * many after that. Claims are made by the reading thread, each before the row that claims goes to a worker.
 */
final class FlightItems {

    private static final int FIRST_SIZE = 4;
    private static final int MEASURES = 3;

    private final ItemPlaces places;
    private short[] placeNumbers = new short[FIRST_SIZE];
    private byte[] kinds = new byte[FIRST_SIZE];
    private int[] pieces = new int[FIRST_SIZE];
    private double[] amounts = new double[FIRST_SIZE];
    private int[] counts = new int[FIRST_SIZE];
    private int size;
    private Optional<Origin> fault = Optional.empty();
    private volatile Optional<ItemClaim> claim = Optional.empty();

    FlightItems(ItemPlaces places) {
        this.places = places;
    }

    @SuppressWarnings("EnumOrdinal") // never stored
    void add(LoadItem item) {
        short place = places.number(item.place());
        byte kind = (byte) (item.kind().ordinal() * MEASURES + item.measure().ordinal());
        int at = 0;
        while (at < size && (placeNumbers[at] != place || kinds[at] != kind)) {
            at++;
        }
        if (at == size) {
            grow();
            placeNumbers[at] = place;
            kinds[at] = kind;
            size++;
        }
        pieces[at] += item.pieces();
        amounts[at] += item.amount();
        counts[at]++;
    }

    private void grow() {
        if (size == kinds.length) {
            int more = size + (size >> 1) + 1;
            placeNumbers = Arrays.copyOf(placeNumbers, more);
            kinds = Arrays.copyOf(kinds, more);
            pieces = Arrays.copyOf(pieces, more);
            amounts = Arrays.copyOf(amounts, more);
            counts = Arrays.copyOf(counts, more);
        }
    }

    /** Remembers the first item that cannot be used. */
    void fault(Origin origin) {
        if (fault.isEmpty()) {
            fault = Optional.of(origin);
        }
    }

    Optional<Origin> fault() {
        return fault;
    }

    int size() {
        return size;
    }

    /** One of the sums. */
    LoadItem at(int index) {
        return new LoadItem(
                places.at(placeNumbers[index]),
                ItemKind.ALL.get(kinds[index] / MEASURES),
                LoadItem.Measure.ALL.get(kinds[index] % MEASURES),
                pieces[index],
                amounts[index]);
    }

    /** How many items a sum is of. */
    int items(int index) {
        return counts[index];
    }

    /** Takes the items for a row, unless an earlier one has them. */
    void claim(ItemClaim row) {
        if (claim.isEmpty() || (claim.get().ahead() && !row.ahead())) {
            claim = Optional.of(row);
        }
    }

    /** The row that has the items. */
    Optional<ItemClaim> claim() {
        return claim;
    }
}
