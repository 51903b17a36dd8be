package org.steelyard.read;

import java.util.List;

/** The cells of a row that say which flight it is: flight, date and tail. */
final class KeyCells {

    private final int[] columns;
    private final String[] headings;

    KeyCells(Binding binding) {
        List<BoundColumn> keys = binding.columns().all().stream()
                .filter(column ->
                        column.slot() == Slot.FLIGHT || column.slot() == Slot.DATE || column.slot() == Slot.TAIL)
                .toList();
        columns = keys.stream().mapToInt(BoundColumn::index).toArray();
        headings = keys.stream().map(column -> Blanks.fold(column.heading())).toArray(String[]::new);
    }

    /** How many of them are filled, but for a cell that is looked at for itself. */
    int filled(RawRow row, int butFor) {
        int filled = 0;
        for (int column : columns) {
            filled += column != butFor && !Blanks.isBlank(row.cell(column)) ? 1 : 0;
        }
        return filled;
    }

    int filled(RawRow row) {
        return filled(row, -1);
    }

    /** Whether all of them are the headings. */
    boolean areHeadings(RawRow row) {
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
