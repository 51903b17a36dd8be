package org.steelyard.report.output.book;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.book.WorkbookText;

/** The sheets that understand the season: charts, statistics, drivers, unusual flights, drift. */
final class SheetsOfStatistics {

    private final SheetCharts charts;
    private final SheetGrid drivers;
    private final SheetGrid drift;
    private final EndlessSheet statisticsRows;
    private final EndlessSheet unusualRows;
    private final WorkbookStyles listStyles;
    private final WorkbookStyles pageStyles;

    SheetsOfStatistics(
            XSSFWorkbook book,
            WorkbookStyles listStyles,
            WorkbookStyles pageStyles,
            WorkbookText text,
            Function<SheetLayout, EndlessSheet> rolls) {
        this.listStyles = listStyles;
        this.pageStyles = pageStyles;
        charts = new SheetCharts(book, listStyles, pageStyles, text, rolls);
        drivers = new SheetGrid(book.createSheet(SheetDrivers.NAME), text);
        drift = new SheetGrid(book.createSheet(SheetDrift.NAME), text);
        statisticsRows = rolls.apply(SheetStatistics.LAYOUT);
        unusualRows = rolls.apply(SheetUnusual.LAYOUT);
    }

    void write(SeasonSummary season, WorkbookPage page) {
        charts.write(season);
        new SheetStatistics(statisticsRows, listStyles).write(season);
        new SheetDrivers(drivers, pageStyles).write(season.statistics(), page);
        new SheetUnusual(unusualRows, listStyles).write(season.statistics().unusual());
        new SheetDrift(drift, pageStyles).write(season.statistics().drift(), page);
    }

    /** Names of the sheets with charts. */
    List<String> charts() {
        return charts.names();
    }

    /** Names of the sheets with figures. */
    List<String> sheets() {
        List<String> names = new ArrayList<>(statisticsRows.names());
        names.add(SheetDrivers.NAME);
        names.addAll(unusualRows.names());
        names.add(SheetDrift.NAME);
        return names;
    }

    /** Names of the sheets that hold what charts draw. */
    List<String> data() {
        return charts.dataNames();
    }

    /** Sets filters and pages, when all sheets are in order. */
    void finish(WorkbookPage page) {
        statisticsRows.finish(page, SheetStatistics.NONE);
        unusualRows.finish(page, SheetUnusual.NONE);
        charts.finish(page);
    }
}
