package org.steelyard.report.output.book;

import java.util.List;
import org.steelyard.report.book.BookTable;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.table.DataTable;

/** Tables under each other, with a title and what is to be known of them. */
final class SheetOfTables {

    static final String TRIM_SPREAD = "Trim spread";
    static final String RECORDED_TRIM = "Recorded trim";

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetOfTables(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(String title, String note, List<DataTable> tables, WorkbookPage page) {
        int last = tables.get(0).columns().size() - 1;
        BookTable layout = new BookTable(grid, styles).widths(tables.get(0).columns());
        grid.row(30).label(title, styles.title);
        grid.row(30).label(note, styles.remark);
        grid.join(0, last);
        grid.gap(8);
        tables.forEach(table -> {
            layout.write(table);
            grid.gap(12);
        });
        page.setUp(grid.sheet(), 1, 0);
    }
}
