package org.steelyard.report.book;

import java.util.List;

/**
 * How a streamed sheet looks.
 *
 * @param name name of the sheet; its continuations are numbered from 2
 * @param note what is to be known of it, above the headings
 * @param columns from left to right
 * @param frozenColumns how many of them stay in sight, and are printed again on pages to the right
 * @param headingLines lines of the longest heading
 * @param pagesWide on how many pages side by side it is printed
 */
public record SheetLayout(
        String name, String note, List<SheetColumn> columns, int frozenColumns, int headingLines, int pagesWide) {

    public SheetLayout {
        columns = List.copyOf(columns);
    }

    /** The same with more that is to be known; a blank changes nothing. */
    public SheetLayout noting(String more) {
        return more.isBlank()
                ? this
                : new SheetLayout(name, more + " " + note, columns, frozenColumns, headingLines, pagesWide);
    }
}
