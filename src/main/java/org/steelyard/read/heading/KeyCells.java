package org.steelyard.read.heading;

import java.util.List;
import org.steelyard.model.input.Field;
import org.steelyard.model.input.Slot;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;

/**
 * The cells of a row that say which flight it is: flight, date and tail. Of a load item, which may lack the last two,
 * those too that say where it lies and what it is.
 */
public final class KeyCells {

    private static final long KEYS = Slot.bits(
            Field.FLIGHT,
            Field.DATE,
            Field.TAIL,
            Field.ITEM_ZONE,
            Field.ITEM_ROW,
            Field.ITEM_HOLD,
            Field.ITEM_TANK,
            Field.ITEM_STATION,
            Field.ITEM_PLACE,
            Field.ITEM_KIND);

    private final int[] columns;
    private final String[] headings;

    public KeyCells(Binding binding) {
        List<BoundColumn> keys = binding.columns().all().stream()
                .filter(column -> (KEYS & column.slot().bit()) != 0)
                .toList();
        columns = keys.stream().mapToInt(BoundColumn::index).toArray();
        headings = keys.stream().map(column -> Blanks.fold(column.heading())).toArray(String[]::new);
    }

    /** How many of them are filled, but for a cell that is looked at for itself. */
    public int filled(RawRow row, int butFor) {
        int filled = 0;
        for (int column : columns) {
            filled += column != butFor && !Blanks.isBlank(row.cell(column)) ? 1 : 0;
        }
        return filled;
    }

    public int filled(RawRow row) {
        return filled(row, -1);
    }

    /** Whether all of them are the headings. */
    public boolean areHeadings(RawRow row) {
        for (int i = 0; i < columns.length; i++) {
            String text = Blanks.strip(row.cell(columns[i]));
            boolean mayBe = text.length() >= headings[i].length()
                    && Character.toLowerCase(text.charAt(0)) == headings[i].charAt(0);
            if (!mayBe || !Blanks.fold(text).equals(headings[i])) {
                return false;
            }
        }
        return columns.length > 0;
    }
}
