package org.steelyard.report.output.book;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightCloud.OfType;
import org.steelyard.analyse.column.FlightCloud.Point;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.find.GroupSpread;
import org.steelyard.check.result.Status;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.Envelope;
import org.steelyard.model.limit.LimitPoint;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.type.MeanChord;
import org.steelyard.report.book.ChartAxis;
import org.steelyard.report.book.ChartDataSheet;
import org.steelyard.report.book.ChartDataSheet.Line;
import org.steelyard.report.book.WorkbookChart;
import org.steelyard.report.book.WorkbookChart.Place;
import org.steelyard.report.book.WorkbookChart.SeriesStyle;
import org.steelyard.report.book.WorkbookPalette;
import org.steelyard.report.words.EnvelopeOutline;
import org.steelyard.report.words.SeasonWords;

/** The charts of one type: its envelopes with every flight, trim against CG, and how trim spreads. */
final class TypeCharts {

    static final int COLUMNS = 10;
    static final int ROWS = 18;

    private static final int SETTINGS = 6;
    private static final int CELLS = 16;
    private static final String TRIM_TITLE = "Take-off trim, units";

    private final XSSFSheet sheet;
    private final ChartDataSheet small;
    private final FlightCloud cloud;
    private final OfType type;
    private final List<GroupSpread> spreads;
    private final SheetPoints points;
    private final int firstRow;
    private int charts;

    /**
     * Charts of a type.
     *
     * @param sheet where they go
     * @param firstRow row where they begin
     * @param small takes the small tables
     * @param cloud figures of the points
     * @param type the type's points
     * @param spreads statistics of the type
     * @param points where the points were written
     */
    TypeCharts(
            XSSFSheet sheet,
            int firstRow,
            ChartDataSheet small,
            FlightCloud cloud,
            OfType type,
            List<GroupSpread> spreads,
            SheetPoints points) {
        this.sheet = sheet;
        this.firstRow = firstRow;
        this.small = small;
        this.cloud = cloud;
        this.type = type;
        this.spreads = spreads;
        this.points = points;
    }

    void draw() {
        for (Phase phase : SheetPoints.PHASES) {
            type.type().envelope(phase).ifPresent(envelope -> envelope(phase, envelope));
        }
        List<GroupSpread> trims = settings(type.type().id(), spreads);
        if (!trims.isEmpty()) {
            trimAgainstCg(trims);
        }
        charts += charts % 2;
        for (GroupSpread trim : trims) {
            histogram(trim);
            months(trim);
        }
    }

    /** Spreads of trim of the flap settings that fly most. */
    static List<GroupSpread> settings(String typeId, List<GroupSpread> spreads) {
        return spreads.stream()
                .filter(row -> row.typeId().equals(typeId)
                        && row.measure() == Measure.TAKEOFF_TRIM
                        && row.grouping().equals("flap setting"))
                .sorted(Comparator.comparingLong(row -> -row.spread().n()))
                .limit(SETTINGS)
                .toList();
    }

    private Place next() {
        Place place = new Place(charts % 2 * (COLUMNS + 1), firstRow + charts / 2 * (ROWS + 1), COLUMNS, ROWS);
        if (charts % 4 == 0 && charts > 0) {
            sheet.setRowBreak(place.row() - 2);
        }
        charts++;
        return place;
    }

    private void envelope(Phase phase, Envelope envelope) {
        List<Line> corners = outline(envelope, type.type().geometry().chord());
        Optional<ChartAxis> across = ChartAxis.around(
                "CG, % MAC",
                DoubleStream.concat(figures(corners, 0), values(point -> cloud.value(point, SheetPoints.cg(phase)))));
        Optional<ChartAxis> up = ChartAxis.around(
                "Mass, kg", DoubleStream.concat(figures(corners, 1), values(point -> cloud.massKg(point, phase))));
        var table = small.write(
                type.type().id() + ": limits, " + phase.label(), List.of("", "CG, % MAC", "mass, kg"), corners);
        WorkbookChart chart = new WorkbookChart(sheet, next(), "Envelope and flights, " + phase.label())
                .scatter(across.orElseThrow(), up.orElseThrow());
        for (Status status : Status.values()) {
            points.rows(status)
                    .ifPresent(rows -> chart.points(
                            status.label(),
                            style(status),
                            points.cells(rows, SheetPoints.cgColumn(phase)),
                            points.cells(rows, SheetPoints.massColumn(phase))));
        }
        chart.line("limits", WorkbookPalette.INK.rgb(), false, table.figures(0), table.figures(1));
        chart.draw(true);
    }

    private static SeriesStyle style(Status status) {
        return switch (status) {
            case CLEAN -> SeriesStyle.CLEAN;
            case MARGINAL -> SeriesStyle.MARGINAL;
            case BREACHED -> SeriesStyle.BREACHED;
        };
    }

    private DoubleStream values(Function<Point, OptionalDouble> figure) {
        return type.points().stream().map(figure).flatMapToDouble(OptionalDouble::stream);
    }

    private static DoubleStream figures(List<Line> lines, int column) {
        return lines.stream().flatMapToDouble(line -> line.figures().get(column).stream());
    }

    private void trimAgainstCg(List<GroupSpread> settings) {
        Optional<ChartAxis> across = ChartAxis.around(
                "Take-off CG, % MAC",
                values(point -> cloud.value(point, Measure.TAKEOFF_TRIM).isPresent()
                        ? cloud.value(point, Measure.TAKEOFF_CG)
                        : OptionalDouble.empty()));
        Optional<ChartAxis> up =
                ChartAxis.ofTrim(TRIM_TITLE, values(point -> cloud.value(point, Measure.TAKEOFF_TRIM)));
        if (across.isEmpty() || up.isEmpty()) {
            return;
        }
        WorkbookChart chart = new WorkbookChart(sheet, next(), "Take-off trim against CG by flap setting")
                .scatter(across.get(), up.get());
        for (int i = 0; i < settings.size(); i++) {
            String setting = setting(settings.get(i));
            int column = points.trimColumn(setting);
            points.rows()
                    .ifPresent(rows -> chart.points(
                            "flaps " + shown(setting),
                            SeriesStyle.ofSetting(points.place(setting)),
                            points.cells(rows, SheetPoints.cgColumn(Phase.TAKEOFF)),
                            points.cells(rows, column)));
        }
        chart.draw(true);
    }

    /** Flaps and thrust of a group, as points have them. */
    static String setting(GroupSpread spread) {
        return TrimSetting.words(spread.flaps(), spread.thrust());
    }

    static String shown(String setting) {
        return setting.isBlank() ? "not given" : setting;
    }

    private void histogram(GroupSpread setting) {
        Spread spread = setting.spread();
        double width = ChartAxis.around("", DoubleStream.of(spread.min(), spread.max()))
                        .orElseThrow()
                        .step()
                * 8
                / CELLS;
        double round = Math.pow(10, Math.floor(Math.log10(width)));
        width = width / round > 5 ? 5 * round : width / round > 2 ? 2 * round : round;
        var cells = cloud.cells(setting.setting(), Measure.TAKEOFF_TRIM, width);
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < cells.counts().size(); i++) {
            double middle = cells.first() + i * cells.width();
            boolean typical = middle + cells.width() / 2 > spread.p5() && middle - cells.width() / 2 <= spread.p95();
            OptionalDouble count = OptionalDouble.of(cells.counts().get(i).doubleValue());
            lines.add(new Line(
                    FindingText.trim(middle, width, TrimUnit.UNITS),
                    typical ? List.of(count, OptionalDouble.empty()) : List.of(OptionalDouble.empty(), count)));
        }
        double most =
                cells.counts().stream().mapToDouble(Long::doubleValue).max().orElse(1);
        String title = String.format(
                Locale.ROOT,
                "Take-off trim with flaps %s: typical %s to %s, n = %,d",
                shown(setting(setting)),
                SeasonWords.trim(spread.p5(), TrimUnit.UNITS),
                SeasonWords.trim(spread.p95(), TrimUnit.UNITS),
                spread.n());
        var table = small.write(
                type.type().id() + ": " + title, List.of("trim, units", "typical (p5 to p95)", "rarer"), lines);
        WorkbookChart chart =
                new WorkbookChart(sheet, next(), title).bars(TRIM_TITLE, ChartAxis.fromZero("Flights", most), false);
        chart.bar("typical: 5th to 95th percentile", WorkbookPalette.SLATE.rgb(), table.names(), table.figures(0));
        chart.bar("rarer", WorkbookPalette.RULE.rgb(), table.names(), table.figures(1));
        chart.draw(true);
    }

    private void months(GroupSpread setting) {
        List<GroupSpread> months = spreads.stream()
                .filter(row -> row.grouping().equals("month")
                        && row.measure() == Measure.TAKEOFF_TRIM
                        && row.setting().equals(setting.setting()))
                .toList();
        if (months.size() < 2) {
            return;
        }
        String title = "Take-off trim by month with flaps " + shown(setting(setting));
        var table = small.writeTrim(
                type.type().id() + ": " + title,
                List.of("month", "95th percentile", "median", "5th percentile"),
                months.stream()
                        .map(month -> Line.of(
                                month.group() + (month.few() ? " (few)" : ""),
                                month.spread().p95(),
                                month.spread().median(),
                                month.spread().p5()))
                        .toList());
        DoubleStream all = months.stream()
                .flatMapToDouble(month ->
                        DoubleStream.of(month.spread().p5(), month.spread().p95()));
        WorkbookChart chart = new WorkbookChart(sheet, next(), title)
                .lines("Month", ChartAxis.ofTrim(TRIM_TITLE, all).orElseThrow());
        chart.line("95th percentile", SeriesStyle.SECOND, true, true, table.names(), table.figures(0));
        chart.line("median", SeriesStyle.FIRST, false, true, table.names(), table.figures(1));
        chart.line("5th percentile", SeriesStyle.THIRD, true, true, table.names(), table.figures(2));
        chart.draw(true);
    }

    /** Up the forward limit, down the aft one, and closed. */
    private static List<Line> outline(Envelope envelope, MeanChord chord) {
        List<Line> corners = new ArrayList<>();
        for (LimitPoint point : EnvelopeOutline.of(envelope)) {
            corners.add(Line.of("", chord.percentAt(point.armM()), point.massKg()));
        }
        corners.add(corners.get(0));
        return corners;
    }
}
