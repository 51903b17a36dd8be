package org.steelyard.read.table;

import java.io.Serializable;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.loading.Origin;
import org.steelyard.read.text.Blanks;

/** One row of a source as it stands there, not yet understood. Immutable. */
public final class RawRow implements Serializable {

    private static final long serialVersionUID = 1;

    private static final CellKind[] ALL_TEXT = {};
    private static final int[] SIDE_BY_SIDE = {};

    private final long number;
    private final int size;
    private final int[] places;
    private final String[] cells;
    private final CellKind[] kinds;
    private final Optional<SkipReason> leftOut;
    private final Optional<Origin> former;

    private RawRow(
            long number,
            int size,
            int[] places,
            String[] cells,
            CellKind[] kinds,
            Optional<SkipReason> leftOut,
            Optional<Origin> former) {
        this.number = number;
        this.size = size;
        this.places = places;
        this.cells = cells;
        this.kinds = kinds;
        this.leftOut = leftOut;
        this.former = former;
    }

    /** A row of text; the array is handed over. */
    public static RawRow ofText(long number, String... cells) {
        return new RawRow(number, cells.length, SIDE_BY_SIDE, cells, ALL_TEXT, Optional.empty(), Optional.empty());
    }

    /** A row of typed cells; the arrays are handed over and equally long. */
    public static RawRow of(long number, String[] cells, CellKind[] kinds) {
        return new RawRow(number, cells.length, SIDE_BY_SIDE, cells, kinds, Optional.empty(), Optional.empty());
    }

    /**
     * A row whose cells stand far apart, so that the blank ones between them take no room; the arrays are handed over.
     *
     * @param size how many cells the row has with the blank ones
     * @param places where the others stand, in rising order; at least one
     */
    public static RawRow farApart(long number, int size, int[] places, String[] cells, CellKind[] kinds) {
        return new RawRow(number, size, places, cells, kinds, Optional.empty(), Optional.empty());
    }

    /** The row of the same cells, so many rows farther down. */
    public RawRow farther(long rows) {
        return new RawRow(number + rows, size, places, cells, kinds, leftOut, former);
    }

    /** The row as one that is passed over. */
    public RawRow leftOut(SkipReason reason) {
        return new RawRow(number, size, places, cells, kinds, Optional.of(reason), former);
    }

    /** The row as one that puts another right. */
    public RawRow puttingRight(Origin other) {
        return new RawRow(number, size, places, cells, kinds, leftOut, Optional.of(other));
    }

    /** The row with other cells in its first places; the arrays are equally long. */
    public RawRow withFirst(String[] first, CellKind[] firstKinds) {
        int behind = places.length == 0 ? Math.min(first.length, size) : placeFrom(first.length);
        int stored = places.length == 0 ? size - behind : places.length - behind;
        String[] allCells = Arrays.copyOf(first, first.length + stored);
        CellKind[] allKinds = Arrays.copyOf(firstKinds, allCells.length);
        int[] allPlaces = places.length == 0 ? SIDE_BY_SIDE : new int[allCells.length];
        for (int i = 0; i < allPlaces.length; i++) {
            allPlaces[i] = i < first.length ? i : places[behind + i - first.length];
        }
        for (int i = 0; i < stored; i++) {
            allCells[first.length + i] = cells[behind + i];
            allKinds[first.length + i] = kinds.length == 0 ? CellKind.TEXT : kinds[behind + i];
        }
        return new RawRow(number, Math.max(size, first.length), allPlaces, allCells, allKinds, leftOut, former);
    }

    /** Why the row is passed over, if it is. */
    public Optional<SkipReason> leftOut() {
        return leftOut;
    }

    /** Where the row stands that this one puts right, if it does. */
    Optional<Origin> former() {
        return former;
    }

    /** The number of its first line in a text file, or of the row in a sheet, from 1. */
    public long number() {
        return number;
    }

    /** Its cells as they stand there, with the blank ones between them. */
    public List<String> cells() {
        String[] all = new String[size];
        Arrays.setAll(all, this::cell);
        return List.of(all);
    }

    public int size() {
        return size;
    }

    /** A cell, blank where the row ends before it. */
    public String cell(int index) {
        if (places.length == 0) {
            return index < cells.length ? cells[index] : "";
        }
        int at = Arrays.binarySearch(places, index);
        return at < 0 ? "" : cells[at];
    }

    public CellKind kind(int index) {
        if (places.length == 0) {
            return index < kinds.length ? kinds[index] : CellKind.TEXT;
        }
        int at = Arrays.binarySearch(places, index);
        return at < 0 ? CellKind.TEXT : kinds[at];
    }

    /** The first place from one on whose cell is not blank, -1 if there is none. */
    public int nextFilled(int from) {
        for (int at = placeFrom(from); at < cells.length; at++) {
            if (!Blanks.isBlank(cells[at])) {
                return places.length == 0 ? at : places[at];
            }
        }
        return -1;
    }

    /** The first stored cell at a place or behind it. */
    private int placeFrom(int index) {
        if (places.length == 0) {
            return index;
        }
        int at = Arrays.binarySearch(places, index);
        return at < 0 ? -at - 1 : at;
    }

    /** Whether there is content at or after a place. */
    public boolean isBlankFrom(int index) {
        return nextFilled(index) < 0;
    }

    public boolean isBlank() {
        return isBlankFrom(0);
    }

    /** A row as it goes to another machine; why it is passed over does not, and it is no longer. */
    private static final class Sent implements Serializable {

        private static final long serialVersionUID = 1;

        private final long number;
        private final int size;
        private final int[] places;
        private final String[] cells;
        private final CellKind[] kinds;

        Sent(RawRow row) {
            number = row.number;
            size = row.size;
            places = row.places;
            cells = row.cells;
            kinds = row.kinds;
        }

        private Object readResolve() {
            return new RawRow(number, size, places, cells, kinds, Optional.empty(), Optional.empty());
        }
    }

    private Object writeReplace() {
        return new Sent(this);
    }
}
