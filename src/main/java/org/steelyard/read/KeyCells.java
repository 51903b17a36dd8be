package org.steelyard.read;

import java.util.List;

/** The cells of a row that say which flight it is: flight, date and tail. */
final class KeyCells {

    private final List<BoundColumn> columns;

    KeyCells(Binding binding) {
        columns = binding.columns().all().stream()
                .filter(column -> column.slot() == Slot.FLIGHT
                        || column.slot() == Slot.DATE
                        || column.slot() == Slot.TAIL)
                .toList();
    }

    /** How many of them are filled, but for a cell that is looked at for itself. */
    int filled(RawRow row, int butFor) {
        int filled = 0;
        for (BoundColumn column : columns) {
            filled += column.index() != butFor && !Blanks.isBlank(row.cell(column.index())) ? 1 : 0;
        }
        return filled;
    }

    int filled(RawRow row) {
        return filled(row, -1);
    }

    /** Whether all of them are the headings. */
    boolean areHeadings(RawRow row) {
        for (BoundColumn column : columns) {
            String text = row.cell(column.index());
            if (text.length() < column.heading().length()
                    || !Blanks.fold(text).equals(Blanks.fold(column.heading()))) {
                return false;
            }
        }
        return true;
    }
}
