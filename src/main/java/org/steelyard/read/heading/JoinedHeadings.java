package org.steelyard.read.heading;

import java.util.List;
import java.util.Optional;
import org.steelyard.read.table.MergedArea;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.text.Blanks;

/**
 * Headings that take two rows, as merged cells show: a heading merged across columns stands before each heading below
 * it ("Passengers" above "A" and "B" gives "Passengers A", "Passengers B"); one merged over both rows stands alone.
 */
final class JoinedHeadings {

    private JoinedHeadings() {}

    /** Both rows as one, under the number of the lower; empty where no merged cell joins them. */
    static Optional<RawRow> of(RawRow upper, RawRow lower, List<MergedArea> areas) {
        List<MergedArea> joining = areas.stream()
                .filter(area -> area.firstRow() == upper.number()
                        && (area.lastColumn() > area.firstColumn() || area.lastRow() > area.firstRow()))
                .toList();
        if (joining.isEmpty() || lower.number() != upper.number() + 1) {
            return Optional.empty();
        }
        String[] headings = new String[Math.max(upper.size(), lower.size())];
        for (int column = 0; column < headings.length; column++) {
            headings[column] = heading(upper, lower, column, joining);
        }
        return Optional.of(RawRow.ofText(lower.number(), headings));
    }

    private static String heading(RawRow upper, RawRow lower, int column, List<MergedArea> joining) {
        int at = column;
        String above = joining.stream()
                .filter(area -> area.covers(upper.number(), at))
                .findFirst()
                .map(area -> upper.cell(area.firstColumn()))
                .orElse(upper.cell(column));
        return Blanks.strip(Blanks.strip(above) + " " + Blanks.strip(lower.cell(column)));
    }
}
