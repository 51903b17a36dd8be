package org.steelyard.report.output.book;

import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;
import org.steelyard.analyse.find.DriftChart;
import org.steelyard.report.book.BookTable;
import org.steelyard.report.book.ChartAxis;
import org.steelyard.report.book.ChartCells;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.WorkbookChart;
import org.steelyard.report.book.WorkbookChart.Place;
import org.steelyard.report.book.WorkbookChart.SeriesStyle;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.season.DriftTable;

/** Control charts by week: charts and signals above, the weeks below them. */
final class SheetDrift {

    static final String NAME = "Drift by week";

    private static final int COLUMNS = 13;
    private static final int CHART_ROWS = 20;
    private static final int CHART_COLUMN = 7;

    private final SheetGrid grid;
    private final WorkbookStyles styles;

    SheetDrift(SheetGrid grid, WorkbookStyles styles) {
        this.grid = grid;
        this.styles = styles;
    }

    void write(List<DriftChart> charts, WorkbookPage page) {
        grid.widths(13, 10, 12, 12, 12, 14, 3, 16, 16, 16, 16, 16, 16);
        grid.row(30).label("Drift of take-off CG by week", styles.title);
        grid.row(44)
                .label(
                        String.format(
                                Locale.ROOT,
                                "Weekly means by ISO week within a type. Limits: mean ± t s √(1/n − 1/N), s within weeks, t for a"
                                        + " chance of 2.5 %% shared out among the weeks (analysis of means, Bonferroni). Shift: the"
                                        + " greatest step between the flights before and after a week, against 1,999 seeded draws"
                                        + " without one, at 2.5 %%. Together a type that does not change gives a signal in at most %.0f %%"
                                        + " of seasons, if flights vary independently within weeks; a change of season, of routes or"
                                        + " of tails is a change, too.",
                                100 * DriftChart.FALSE_ALARM),
                        styles.remark);
        grid.join(0, COLUMNS - 1);
        grid.gap(8);
        if (charts.isEmpty()) {
            grid.row().label("No type has flights in four weeks.", styles.quiet);
            grid.join(0, COLUMNS - 1);
        }
        for (int i = 0; i < charts.size(); i++) {
            if (i > 0) {
                grid.sheet().setRowBreak(grid.position() - 1);
            }
            chart(charts.get(i));
        }
        page.setUp(grid.sheet(), 1, 0);
    }

    private void chart(DriftChart chart) {
        DataTable weeks = DriftTable.of(chart);
        BookTable table = new BookTable(grid, styles).to(COLUMNS - 1);
        table.title(weeks.title(), weeks);
        if (!weeks.note().isBlank()) {
            grid.row(18).data(weeks.note(), new WorkbookStyles.TextStyle(styles.news, styles.news));
            grid.join(0, COLUMNS - 1);
        }
        int first = grid.position() + 1;
        table.body(weeks);
        picture(chart, first, grid.position() - 1);
        while (grid.position() < first + CHART_ROWS + 1) {
            grid.row();
        }
        grid.gap(14);
    }

    private void picture(DriftChart chart, int first, int last) {
        String sheet = grid.sheet().getSheetName();
        ChartCells weeks = new ChartCells(sheet, 0, first, last);
        DoubleStream all = chart.weeks().stream()
                .flatMapToDouble(week -> DoubleStream.of(
                        week.meanPercentMac(),
                        clipped(chart, week.lowPercentMac()),
                        clipped(chart, week.highPercentMac())));
        ChartAxis up = ChartAxis.around("Mean take-off CG, % MAC", all).orElseThrow();
        WorkbookChart picture = new WorkbookChart(
                        grid.sheet(),
                        new Place(CHART_COLUMN, first, COLUMNS - CHART_COLUMN, CHART_ROWS),
                        chart.typeId() + ": weekly mean take-off CG")
                .lines("ISO week", up);
        picture.line("weekly mean", SeriesStyle.FIRST, false, true, weeks, new ChartCells(sheet, 2, first, last));
        picture.line("lower limit", SeriesStyle.FOURTH, true, false, weeks, new ChartCells(sheet, 3, first, last));
        picture.line("upper limit", SeriesStyle.FOURTH, true, false, weeks, new ChartCells(sheet, 4, first, last));
        picture.draw(true);
    }

    /** The wide limits of a week with hardly a flight do not set the range of the picture. */
    private static double clipped(DriftChart chart, double limit) {
        double reach = 4 * chart.withinSd();
        return Math.max(chart.meanPercentMac() - reach, Math.min(chart.meanPercentMac() + reach, limit));
    }
}
