package org.steelyard.read.season;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.model.input.ColumnMap.MergedCells;
import org.steelyard.model.input.Field;
import org.steelyard.model.unit.Counted;
import org.steelyard.read.heading.Binding;
import org.steelyard.read.heading.BoundColumn;
import org.steelyard.read.table.CellKind;
import org.steelyard.read.table.MergedArea;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;

/**
 * What the rows of a sheet have from its merged cells. The value stands in the first cell of an area. A place below it
 * has its text or date too if the heading map fills down; a place that means something and does not is marked, so that
 * its row is rejected with the reason. A blank area says nothing, and a blank row stays blank. Takes the rows in order.
 */
final class MergedRows {

    private final List<MergedArea> areas;
    private final List<Open> open = new ArrayList<>();
    private final BoundColumn[] columns;
    private final boolean fillDown;
    private int next;
    private long filled;
    private long leftBlank;

    private record Open(MergedArea area, String text, CellKind kind) {}

    MergedRows(List<MergedArea> areas, Binding binding) {
        this.areas = List.copyOf(areas);
        this.columns = new BoundColumn[binding.headings().size()];
        binding.columns().all().forEach(column -> columns[column.index()] = column);
        this.fillDown = binding.map().mergedCells() == MergedCells.FILL_DOWN;
    }

    RawRow apply(RawRow row) {
        if (next == areas.size() && open.isEmpty()) {
            return row;
        }
        open.removeIf(one -> one.area().lastRow() < row.number());
        while (next < areas.size() && areas.get(next).firstRow() <= row.number()) {
            MergedArea area = areas.get(next++);
            if (area.lastRow() >= row.number()) {
                open(area, row);
            }
        }
        return open.isEmpty() || row.isBlank() ? row : covered(row);
    }

    private void open(MergedArea area, RawRow row) {
        boolean begins = area.firstRow() == row.number();
        String text = begins ? row.cell(area.firstColumn()) : "";
        if (!begins || !Blanks.isBlank(text)) {
            open.add(new Open(area, text, begins ? row.kind(area.firstColumn()) : CellKind.TEXT));
        }
    }

    private RawRow covered(RawRow row) {
        String[] texts = new String[columns.length];
        CellKind[] kinds = new CellKind[columns.length];
        for (int i = 0; i < columns.length; i++) {
            texts[i] = row.cell(i);
            kinds[i] = row.kind(i);
        }
        for (Open one : open) {
            int last = Math.min(one.area().lastColumn(), columns.length - 1);
            for (int column = one.area().firstColumn(); column <= last; column++) {
                if (columns[column] != null && !one.area().begins(row.number(), column)) {
                    cover(one, columns[column], texts, kinds);
                }
            }
        }
        return row.withFirst(texts, kinds);
    }

    private void cover(Open one, BoundColumn column, String[] texts, CellKind[] kinds) {
        int index = column.index();
        Field.Kind kind = column.rule().field().kind();
        boolean inWords = kind == Field.Kind.TEXT || kind == Field.Kind.DATE;
        boolean below = index == one.area().firstColumn();
        if (fillDown && inWords && below && !Blanks.isBlank(one.text())) {
            texts[index] = one.text();
            kinds[index] = one.kind();
            filled++;
        } else if (column.slot() == Field.EXTRA) {
            leftBlank++;
        } else {
            texts[index] = one.area().toString();
            kinds[index] = CellKind.COVERED;
        }
    }

    /** What is to be told of it. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        if (filled > 0) {
            notes.add(
                    Counted.of(filled, "cell") + " under merged cells got their text or date, as the heading map says");
        }
        if (leftBlank > 0) {
            notes.add(Counted.of(leftBlank, "cell") + " of carried columns under merged cells "
                    + (leftBlank == 1 ? "was" : "were") + " left blank");
        }
        return notes;
    }

    /** Whether a row is a title: one filled cell, merged across columns. */
    static boolean isTitle(RawRow row, List<MergedArea> areas) {
        int only = row.nextFilled(0);
        return only >= 0
                && row.isBlankFrom(only + 1)
                && areas.stream()
                        .anyMatch(area -> area.begins(row.number(), only) && area.lastColumn() > area.firstColumn());
    }
}
