package org.steelyard.read;

import java.io.InvalidObjectException;
import java.io.ObjectInputStream;
import java.io.Serializable;
import java.util.List;
import java.util.Optional;
import org.steelyard.model.Origin;

/** One row of a source as it stands there, not yet understood. Immutable. */
public final class RawRow implements Serializable {

    private static final long serialVersionUID = 1;

    private static final CellKind[] ALL_TEXT = {};

    private final long number;
    private final String[] cells;
    private final CellKind[] kinds;
    private final transient Optional<LeftOut> leftOut;
    private final transient Optional<Origin> former;

    private RawRow(long number, String[] cells, CellKind[] kinds, Optional<LeftOut> leftOut, Optional<Origin> former) {
        this.number = number;
        this.cells = cells;
        this.kinds = kinds;
        this.leftOut = leftOut;
        this.former = former;
    }

    /** A row of text; the array is handed over. */
    static RawRow ofText(long number, String... cells) {
        return new RawRow(number, cells, ALL_TEXT, Optional.empty(), Optional.empty());
    }

    /** A row of typed cells; the arrays are handed over and equally long. */
    static RawRow of(long number, String[] cells, CellKind[] kinds) {
        return new RawRow(number, cells, kinds, Optional.empty(), Optional.empty());
    }

    /** The row of the same cells, so many rows farther down. */
    RawRow farther(long rows) {
        return new RawRow(number + rows, cells, kinds, leftOut, former);
    }

    /** The row as one that is passed over. */
    RawRow leftOut(LeftOut reason) {
        return new RawRow(number, cells, kinds, Optional.of(reason), former);
    }

    /** The row as one that puts another right. */
    RawRow puttingRight(Origin other) {
        return new RawRow(number, cells, kinds, leftOut, Optional.of(other));
    }

    /** The row with other cells; the arrays are handed over and equally long. */
    RawRow withCells(String[] otherCells, CellKind[] otherKinds) {
        return new RawRow(number, otherCells, otherKinds, leftOut, former);
    }

    /** Why the row is passed over, if it is. */
    Optional<LeftOut> leftOut() {
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

    /** Its cells as they stand there. */
    public List<String> cells() {
        return List.of(cells);
    }

    int size() {
        return cells.length;
    }

    /** A cell, blank where the row ends before it. */
    String cell(int index) {
        return index < cells.length ? cells[index] : "";
    }

    CellKind kind(int index) {
        return index < kinds.length ? kinds[index] : CellKind.TEXT;
    }

    /** Whether there is content at or after a place. */
    boolean isBlankFrom(int index) {
        for (int i = index; i < cells.length; i++) {
            if (!Blanks.isBlank(cells[i])) {
                return false;
            }
        }
        return true;
    }

    boolean isBlank() {
        return isBlankFrom(0);
    }

    /** A row as it goes to another machine; why it is passed over does not, and it is no longer. */
    private record Sent(long number, String[] cells, CellKind[] kinds, String file, String sheet, long row)
            implements Serializable {

        private Object readResolve() {
            Optional<Origin> former = file.isEmpty() ? Optional.empty() : Optional.of(new Origin(file, sheet, row));
            return new RawRow(number, cells, kinds, Optional.empty(), former);
        }
    }

    private Object writeReplace() {
        return former.isPresent()
                ? new Sent(
                        number,
                        cells,
                        kinds,
                        former.get().file(),
                        former.get().sheet(),
                        former.get().row())
                : new Sent(number, cells, kinds, "", "", 0);
    }

    private void readObject(ObjectInputStream in) throws InvalidObjectException {
        throw new InvalidObjectException("rows are sent in a form of their own");
    }
}
