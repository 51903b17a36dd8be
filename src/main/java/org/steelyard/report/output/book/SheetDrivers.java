package org.steelyard.report.output.book;

import java.util.Locale;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.find.ApartResult;
import org.steelyard.analyse.find.GroupApart;
import org.steelyard.analyse.find.SeasonStatistics;
import org.steelyard.analyse.part.SpreadDrivers;
import org.steelyard.analyse.part.SpreadDrivers.Driver;
import org.steelyard.report.book.BookTable;
import org.steelyard.report.book.ChartAxis;
import org.steelyard.report.book.ChartCells;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.WorkbookChart;
import org.steelyard.report.book.WorkbookChart.Place;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.ApartTable;
import org.steelyard.report.table.season.DriverTable;

/** What drives the spread of take-off CG and trim, and which tails, routes and pilots lie apart. */
final class SheetDrivers {

    static final String NAME = "What drives the spread";

    private static final int COLUMNS = 8;
    private static final int TABLE = 4;
    private static final int LEAST_ROWS = 14;

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetDrivers(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(SeasonStatistics statistics, WorkbookPage page) {
        grid.widths(32, 12, 12, 13, 12, 12, 12, 76);
        grid.row(30).label("What drives the spread of take-off CG and trim", styles.title);
        remark(
                "Exact split of the variance. The pull of a part is c = m (a − ā) / M: its mass times its distance from the"
                        + " mean CG over the take-off mass; the pulls of a flight add up to its CG less the mean. Share ="
                        + " Cov(c, CG) / Var(CG), all together 100 %; below zero the part evens out what others do. Trim goes"
                        + " by way of CG within one flap setting (and thrust rating, where the scale is for one); what a straight line does not explain is the scale's own."
                        + " Only flights that give zones, holds and tanks count. Parts that move together share the credit.",
                44);
        if (statistics.drivers().isEmpty()) {
            grid.row()
                    .label(
                            "No type has " + SpreadDrivers.FEWEST + " flights with zones, holds and tanks given.",
                            styles.quiet);
            grid.join(0, COLUMNS - 1);
        }
        for (int i = 0; i < statistics.drivers().size(); i++) {
            table(statistics.drivers().get(i), i > 0 && i % 2 == 0);
        }
        remark(
                String.format(
                        Locale.ROOT,
                        "Apart from their type: mean take-off CG against the rest of the type. Chance by the rank test of"
                                + " Wilcoxon, Mann and Whitney, adjusted by Holm over all groups of a kind and by"
                                + " Bonferroni over the kinds, so that at most one season in twenty lists any group by"
                                + " chance; groups from %d flights on, listed below"
                                + " %.0f %% and from %.1f sd on. Interval of the difference by Welch, 95 %%.",
                        GroupApart.FEWEST,
                        100 * GroupApart.CHANCE,
                        GroupApart.LEAST_EFFECT),
                32);
        statistics.apart().forEach(this::apart);
        page.setUp(grid.sheet(), 1, 0);
    }

    private void remark(String words, float points) {
        grid.row(points).label(words, styles.remark);
        grid.join(0, COLUMNS - 1);
        grid.gap(6);
    }

    private void table(SpreadDrivers drivers, boolean newPage) {
        if (newPage) {
            grid.sheet().setRowBreak(grid.position() - 1);
        }
        DataTable parts = DriverTable.of(drivers);
        BookTable table = new BookTable(grid, styles).to(COLUMNS - 1);
        table.title(parts.title(), parts);
        grid.row(16)
                .label(
                        String.format(
                                Locale.ROOT,
                                "Together: %s. n = %,d flights with full detail, %,d without; sd %.2f %s",
                                drivers.kinds(),
                                drivers.flights(),
                                drivers.without(),
                                drivers.sd(),
                                drivers.measure().unit()),
                        styles.subtitle);
        int first = grid.position() + 1;
        table.body(parts);
        int last = grid.position() - 1;
        bars(drivers, first, last);
        while (grid.position() < first + rows(first, last)) {
            grid.row();
        }
        grid.gap(10);
    }

    /** The shares of the table as bars to its right. */
    private void bars(SpreadDrivers drivers, int first, int last) {
        String sheet = grid.sheet().getSheetName();
        ChartAxis shares = ChartAxis.withZero(
                "Share of the variance", drivers.drivers().stream().mapToDouble(Driver::share));
        WorkbookChart chart = new WorkbookChart(
                        grid.sheet(),
                        new Place(TABLE + 1, first - 1, COLUMNS - TABLE - 1, rows(first, last)),
                        title(drivers))
                .bars(
                        "Part of the load",
                        new ChartAxis(shares.title(), shares.low(), shares.high(), shares.step(), "0%"),
                        true);
        chart.bar(
                "share",
                WorkbookPalette.SLATE.rgb(),
                new ChartCells(sheet, 0, first, last),
                new ChartCells(sheet, 1, first, last));
        chart.draw(false);
    }

    private static int rows(int first, int last) {
        return Math.max(LEAST_ROWS, last - first + 5);
    }

    private static String title(SpreadDrivers drivers) {
        return drivers.typeId()
                + (drivers.flaps().isBlank() ? "" : ", flaps " + TrimSetting.words(drivers.flaps(), drivers.thrust()))
                + ": spread of " + drivers.measure().label();
    }

    private void apart(ApartResult result) {
        new BookTable(grid, styles).to(COLUMNS - 1).write(ApartTable.of(result));
        grid.gap(10);
    }
}
