package org.steelyard.report.output.book;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.function.Function;
import org.apache.poi.ss.util.WorkbookUtil;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightCloud.OfType;
import org.steelyard.analyse.find.GroupSpread;
import org.steelyard.analyse.season.FindingCount;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.book.ChartAxis;
import org.steelyard.report.book.ChartDataSheet;
import org.steelyard.report.book.ChartDataSheet.Line;
import org.steelyard.report.book.EndlessSheet;
import org.steelyard.report.book.SheetGrid;
import org.steelyard.report.book.SheetLayout;
import org.steelyard.report.book.WorkbookChart;
import org.steelyard.report.book.WorkbookChart.Place;
import org.steelyard.report.book.WorkbookPage;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.book.WorkbookStyles;
import org.steelyard.report.book.WorkbookText;

/** The sheets with charts: one of the season, one for each type; and the sheets with what they draw. */
final class SheetCharts {

    static final String NAME = "Charts";

    private static final int KINDS = 12;
    private static final int TOP_ROWS = 4;

    private final XSSFWorkbook book;
    private final WorkbookStyles listStyles;
    private final WorkbookStyles styles;
    private final WorkbookText text;
    private final Function<SheetLayout, EndlessSheet> rolls;
    private final List<String> names = new ArrayList<>();
    private final List<String> dataNames = new ArrayList<>();
    private final List<EndlessSheet> pointRows = new ArrayList<>();
    private final List<XSSFSheet> pages = new ArrayList<>();
    private final ChartDataSheet small;

    SheetCharts(
            XSSFWorkbook book,
            WorkbookStyles listStyles,
            WorkbookStyles styles,
            WorkbookText text,
            Function<SheetLayout, EndlessSheet> rolls) {
        this.book = book;
        this.listStyles = listStyles;
        this.styles = styles;
        this.text = text;
        this.rolls = rolls;
        small = new ChartDataSheet(new SheetGrid(book.createSheet(ChartDataSheet.NAME), text), styles);
        dataNames.add(ChartDataSheet.NAME);
    }

    /** Sheets with charts, in order. */
    List<String> names() {
        return List.copyOf(names);
    }

    /** Sheets with what they draw, in order. */
    List<String> dataNames() {
        return List.copyOf(dataNames);
    }

    void write(SeasonSummary season) {
        season(season);
        FlightCloud cloud = season.statistics().cloud();
        for (OfType type : cloud.byType(SheetPoints.MOST)) {
            type(cloud, type, season.statistics().spreads());
        }
    }

    private XSSFSheet page(String name, String title, String note) {
        String safe = unused(WorkbookUtil.createSafeSheetName(name));
        XSSFSheet sheet = book.createSheet(safe);
        names.add(safe);
        pages.add(sheet);
        SheetGrid grid = new SheetGrid(sheet, text);
        grid.row(30).label(title, styles.title);
        grid.row(18).label(note, styles.subtitle);
        return sheet;
    }

    private String unused(String name) {
        String free = name;
        for (int i = 2; book.getSheet(free) != null; i++) {
            String ending = " " + i;
            free = name.substring(0, Math.min(name.length(), 31 - ending.length())) + ending;
        }
        return free;
    }

    private void season(SeasonSummary season) {
        XSSFSheet sheet = page(
                NAME,
                "Charts of the season",
                "Shares are of all " + Counted.of(season.all().flights(), "flight")
                        + ". The sheets that follow show each type. What is drawn stands on the sheets Chart data and Points.");
        kinds(season, sheet);
        months(season, sheet);
    }

    private void kinds(SeasonSummary season, XSSFSheet sheet) {
        List<FindingCount> counts = season.findings().stream()
                .filter(count -> count.severity() != Severity.NOTE)
                .limit(KINDS)
                .toList();
        if (counts.isEmpty()) {
            return;
        }
        double all = season.all().flights();
        var table = small.write(
                "Share of findings by kind",
                List.of("kind", "breach, % of flights", "marginal, % of flights"),
                counts.stream().map(count -> kind(count, all)).toList());
        double most = counts.stream()
                .mapToDouble(count -> 100 * count.flights() / all)
                .max()
                .orElse(1);
        WorkbookChart chart = new WorkbookChart(
                        sheet, new Place(0, TOP_ROWS, 13, 26), "Share of flights by kind of finding")
                .bars(
                        "Kind of finding",
                        ChartAxis.fromZero("Flights with such a finding, % of all flights", most),
                        true);
        chart.bar("breach", WorkbookPalette.BREACH_FILL.rgb(), table.names(), table.figures(0));
        chart.bar("marginal", WorkbookPalette.MARGINAL_FILL.rgb(), table.names(), table.figures(1));
        chart.draw(true);
    }

    private static Line kind(FindingCount count, double all) {
        OptionalDouble share = OptionalDouble.of(100 * count.flights() / all);
        return new Line(
                FindingText.kind(count.code(), count.severity()),
                count.severity() == Severity.BREACH
                        ? List.of(share, OptionalDouble.empty())
                        : List.of(OptionalDouble.empty(), share));
    }

    private void months(SeasonSummary season, XSSFSheet sheet) {
        if (season.months().isEmpty()) {
            return;
        }
        List<Line> lines = season.months().stream()
                .map(month -> Line.of(month.group(), 100 * month.shareBreached(), 100 * month.shareMarginal()))
                .toList();
        double most = lines.stream()
                .mapToDouble(line -> line.figures().stream()
                        .mapToDouble(OptionalDouble::getAsDouble)
                        .sum())
                .max()
                .orElse(1);
        var table = small.write(
                "Breached and marginal flights by month", List.of("month", "breached, %", "marginal, %"), lines);
        WorkbookChart chart = new WorkbookChart(
                        sheet, new Place(14, TOP_ROWS, 9, 26), "Breached and marginal flights by month")
                .bars("Month", ChartAxis.fromZero("Flights, % of the month", most), false);
        chart.bar("breached", WorkbookPalette.BREACH_FILL.rgb(), table.names(), table.figures(0));
        chart.bar("marginal", WorkbookPalette.MARGINAL_FILL.rgb(), table.names(), table.figures(1));
        chart.draw(true);
    }

    private void type(FlightCloud cloud, OfType type, List<GroupSpread> spreads) {
        String id = type.type().id();
        List<String> settings = TypeCharts.settings(id, spreads).stream()
                .map(TypeCharts::setting)
                .sorted(GroupSpread.BY_FLAPS)
                .toList();
        EndlessSheet rows = rolls.apply(
                SheetPoints.layout(unused(WorkbookUtil.createSafeSheetName("Points " + id)), type, settings));
        SheetPoints points = new SheetPoints(rows, listStyles, settings);
        points.write(cloud, type);
        pointRows.add(rows);
        dataNames.addAll(rows.names());
        XSSFSheet sheet = page(
                NAME + " " + id,
                String.format(Locale.ROOT, "%s: envelopes and trim", type.type().name()),
                SheetPoints.note(type) + " Circles are clean flights, diamonds marginal, crosses breached ones.");
        new TypeCharts(sheet, TOP_ROWS, small, cloud, type, spreads, points).draw();
    }

    void finish(WorkbookPage page) {
        pages.forEach(sheet -> page.setUp(sheet, 1, 0));
        small.print(page);
        pointRows.forEach(rows -> rows.finish(page, "No flights."));
    }
}
