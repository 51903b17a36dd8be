package org.steelyard.report.book;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apache.poi.ss.usermodel.CellStyle;

/** The sheet with the small tables that charts draw, one below the other. */
public final class ChartDataSheet {

    public static final String NAME = "Chart data";

    private final SheetGrid grid;
    private final WorkbookStyles styles;
    private final String sheet;

    /**
     * One line of a table.
     *
     * @param name its name; blank where the table is of numbers alone
     * @param figures its numbers, some not known
     */
    public record Line(String name, List<OptionalDouble> figures) {

        public static Line of(String name, double... figures) {
            return new Line(
                    name, Arrays.stream(figures).mapToObj(OptionalDouble::of).toList());
        }
    }

    /**
     * Where a table stands.
     *
     * @param sheet name of the sheet
     * @param first first row below its headings
     * @param last last row
     */
    public record Table(String sheet, int first, int last) {

        public ChartCells names() {
            return new ChartCells(sheet, 0, first, last);
        }

        public ChartCells figures(int column) {
            return new ChartCells(sheet, 1 + column, first, last);
        }

        /** Only some of the lines. */
        public ChartCells figures(int column, int from, int to) {
            return new ChartCells(sheet, 1 + column, first + from, first + to);
        }
    }

    public ChartDataSheet(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
        sheet = grid.sheet().getSheetName();
        grid.widths(40, 16, 16, 16, 16);
        grid.row(30).label("Chart data", styles.title);
        grid.row().label("What the charts draw: change a figure and its chart follows.", styles.subtitle);
        grid.gap(8);
    }

    /** Writes a table of at least one line. */
    public Table write(String title, List<String> headings, List<Line> lines) {
        return write(title, headings, lines, styles.decimals(3));
    }

    /** The same, where all figures are trims. */
    public Table writeTrim(String title, List<String> headings, List<Line> lines) {
        return write(title, headings, lines, styles.trim.plain());
    }

    private Table write(String title, List<String> headings, List<Line> lines, CellStyle style) {
        grid.row(20).label(title, styles.section);
        grid.join(0, 4);
        SheetRow head = grid.row(26).label(headings.get(0), styles.tableHeading);
        headings.stream().skip(1).forEach(heading -> head.label(heading, styles.tableHeadingRight));
        int first = grid.position();
        for (Line line : lines) {
            SheetRow row = grid.row().data(line.name(), styles.text).at(1);
            line.figures().forEach(figure -> row.number(figure, style));
        }
        Table table = new Table(sheet, first, grid.position() - 1);
        grid.gap(10);
        return table;
    }

    public void print(WorkbookPage page) {
        page.setUp(grid.sheet(), 1, 0);
    }
}
