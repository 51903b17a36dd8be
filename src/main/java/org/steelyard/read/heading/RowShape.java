package org.steelyard.read.heading;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.steelyard.model.input.ProblemCode;
import org.steelyard.read.table.RawRow;
import org.steelyard.read.table.RowProblems;
import org.steelyard.read.text.Blanks;

/**
 * Whether rows fit the headings.
 *
 * @param headings how many headings there are
 * @param blanks positions of blank headings among them
 * @param mayEndEarly whether a row may have fewer cells than headings
 */
public record RowShape(int headings, List<Integer> blanks, boolean mayEndEarly) {

    public RowShape {
        blanks = List.copyOf(blanks);
    }

    static RowShape of(List<String> headings, boolean mayEndEarly) {
        List<Integer> blanks = new ArrayList<>();
        for (int i = 0; i < headings.size(); i++) {
            if (Blanks.isBlank(headings.get(i))) {
                blanks.add(i);
            }
        }
        return new RowShape(headings.size(), blanks, mayEndEarly);
    }

    public void check(RawRow row, RowProblems problems) {
        boolean tooShort = !mayEndEarly && row.size() < headings;
        if (tooShort || !row.isBlankFrom(headings)) {
            problems.add(
                    "",
                    ProblemCode.MALFORMED_ROW,
                    "the row has " + row.size() + (tooShort ? " cells, fewer" : " cells, more") + " than headings",
                    "",
                    headings + " cells");
            return;
        }
        for (int column = row.nextFilled(0); column >= 0 && !blanks.isEmpty(); column = row.nextFilled(column + 1)) {
            if (Collections.binarySearch(blanks, column) >= 0) {
                problems.add(
                        "",
                        ProblemCode.BAD_HEADING,
                        "column " + (column + 1) + " has a value but no heading",
                        row.cell(column),
                        "a heading, or a blank cell");
            }
        }
    }
}
