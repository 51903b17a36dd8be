package org.steelyard.report.book;

import java.util.List;
import javax.xml.namespace.QName;
import org.apache.poi.xddf.usermodel.PresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFPresetLineDash;
import org.apache.poi.xddf.usermodel.XDDFShapeProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisOrientation;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.AxisTickLabelPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.BarGrouping;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.Grouping;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFChartLegend;
import org.apache.poi.xddf.usermodel.chart.XDDFLineChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xddf.usermodel.text.XDDFRunProperties;
import org.apache.poi.xddf.usermodel.text.XDDFTextBody;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.apache.xmlbeans.XmlObject;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTChart;
import org.openxmlformats.schemas.drawingml.x2006.chart.CTMarker;
import org.openxmlformats.schemas.drawingml.x2006.chart.STDispBlanksAs;

/**
 * A chart of the workbook. Every fill and line has a colour of its own, as a workbook made here has no theme to take
 * one from; titles do not overlap what they name; blank cells leave a gap, and cells of hidden rows and sheets are
 * drawn.
 */
public final class WorkbookChart {

    /** Where a chart stands, in cells. */
    public record Place(int column, int row, int columns, int rows) {}

    /** How a series of points looks: the shape tells as much as the colour. */
    public enum SeriesStyle {
        CLEAN(MarkerStyle.CIRCLE, 3, 0x7E97A6),
        MARGINAL(MarkerStyle.DIAMOND, 7, 0xC98A00),
        BREACHED(MarkerStyle.X, 7, 0x7A2442),
        FIRST(MarkerStyle.CIRCLE, 3, 0x2B4A5E),
        SECOND(MarkerStyle.TRIANGLE, 4, 0xC98A00),
        THIRD(MarkerStyle.SQUARE, 3, 0x2E8B74),
        FOURTH(MarkerStyle.DIAMOND, 4, 0x7A2442),
        FIFTH(MarkerStyle.PLUS, 5, 0x55636E),
        SIXTH(MarkerStyle.STAR, 5, 0x8A5FB0);

        private static final List<SeriesStyle> SETTINGS = List.of(FIRST, SECOND, THIRD, FOURTH, FIFTH, SIXTH);

        private final MarkerStyle marker;
        private final int size;
        private final int rgb;

        SeriesStyle(MarkerStyle marker, int size, int rgb) {
            this.marker = marker;
            this.size = size;
            this.rgb = rgb;
        }

        int rgb() {
            return rgb;
        }

        String shape() {
            return marker.name();
        }

        /** The style of a setting, by its place among those of its type. */
        public static SeriesStyle ofSetting(int place) {
            return SETTINGS.get(place % SETTINGS.size());
        }
    }

    private static final String CHART_SCHEMA = "http://schemas.openxmlformats.org/drawingml/2006/chart";
    private static final int INK = WorkbookPalette.INK.rgb();
    private static final int GRID = 0xE1E6EA;
    private static final double TITLE_POINTS = 12;
    private static final double TEXT_POINTS = 9;

    private final XSSFChart chart;
    private XDDFChartData data;
    private int gapPercent;
    private boolean everyName;

    public WorkbookChart(XSSFSheet sheet, Place place, String title) {
        var drawing = sheet.createDrawingPatriarch();
        chart = drawing.createChart(drawing.createAnchor(
                0, 0, 0, 0, place.column(), place.row(), place.column() + place.columns(), place.row() + place.rows()));
        ChartWords.inEnglish(() -> chart.setTitleText(title));
        chart.setTitleOverlay(false);
        size(chart.getFormattedTitle(), TITLE_POINTS, true);
    }

    private static void size(XDDFTextBody text, double points, boolean bold) {
        for (var paragraph : text.getParagraphs()) {
            XDDFRunProperties run = new XDDFRunProperties();
            run.setFontSize(points);
            run.setBold(bold);
            run.setFillProperties(fill(INK));
            paragraph.setDefaultRunProperties(run);
            paragraph.getTextRuns().forEach(each -> {
                each.setFontSize(points);
                each.setBold(bold);
                each.setFontColor(XDDFColor.from(rgb(INK)));
            });
        }
    }

    private static byte[] rgb(int rgb) {
        return new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb};
    }

    private static XDDFSolidFillProperties fill(int rgb) {
        return new XDDFSolidFillProperties(XDDFColor.from(rgb(rgb)));
    }

    private static XDDFLineProperties line(int rgb, double points) {
        XDDFLineProperties line = new XDDFLineProperties(fill(rgb));
        line.setWidth(points);
        return line;
    }

    private static XDDFLineProperties noLine() {
        return new XDDFLineProperties(new XDDFNoFillProperties());
    }

    /** Points and lines over two axes of numbers. */
    public WorkbookChart scatter(ChartAxis across, ChartAxis up) {
        XDDFValueAxis x = numbers(chart.createValueAxis(AxisPosition.BOTTOM), across);
        XDDFValueAxis y = numbers(chart.createValueAxis(AxisPosition.LEFT), up);
        x.setCrossBetween(AxisCrossBetween.MIDPOINT_CATEGORY);
        y.setCrossBetween(AxisCrossBetween.MIDPOINT_CATEGORY);
        cross(x, y);
        XDDFScatterChartData scatter = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, x, y);
        scatter.setStyle(ScatterStyle.LINE_MARKER);
        data = scatter;
        return this;
    }

    /** Bars over names: upright, or lying with the first name on top. */
    public WorkbookChart bars(String names, ChartAxis up, boolean lying) {
        XDDFCategoryAxis x = category(names, lying ? AxisPosition.LEFT : AxisPosition.BOTTOM);
        XDDFValueAxis y = numbers(chart.createValueAxis(lying ? AxisPosition.BOTTOM : AxisPosition.LEFT), up);
        y.setCrossBetween(AxisCrossBetween.BETWEEN);
        x.setCrosses(AxisCrosses.AUTO_ZERO);
        x.setTickLabelPosition(AxisTickLabelPosition.LOW);
        if (lying) {
            x.setOrientation(AxisOrientation.MAX_MIN);
        }
        y.setCrosses(lying ? AxisCrosses.MAX : AxisCrosses.MIN);
        XDDFBarChartData bars = (XDDFBarChartData) chart.createData(ChartTypes.BAR, x, y);
        bars.setBarDirection(lying ? BarDirection.BAR : BarDirection.COL);
        bars.setBarGrouping(BarGrouping.STACKED);
        gapPercent = lying ? 60 : 12;
        everyName = lying;
        data = bars;
        return this;
    }

    /** Lines over names. */
    public WorkbookChart lines(String names, ChartAxis up) {
        XDDFCategoryAxis x = category(names, AxisPosition.BOTTOM);
        XDDFValueAxis y = numbers(chart.createValueAxis(AxisPosition.LEFT), up);
        y.setCrossBetween(AxisCrossBetween.BETWEEN);
        cross(x, y);
        XDDFLineChartData lines = (XDDFLineChartData) chart.createData(ChartTypes.LINE, x, y);
        lines.setGrouping(Grouping.STANDARD);
        data = lines;
        return this;
    }

    private XDDFCategoryAxis category(String title, AxisPosition position) {
        XDDFCategoryAxis axis = chart.createCategoryAxis(position);
        dress(axis, title);
        return axis;
    }

    private XDDFValueAxis numbers(XDDFValueAxis axis, ChartAxis scale) {
        dress(axis, scale.title());
        axis.setMinimum(scale.low());
        axis.setMaximum(scale.high());
        axis.setMajorUnit(scale.step());
        axis.setNumberFormat(scale.format());
        XDDFShapeProperties grid = axis.getOrAddMajorGridProperties();
        grid.setLineProperties(line(GRID, 0.75));
        return axis;
    }

    private static void dress(XDDFChartAxis axis, String title) {
        ChartWords.inEnglish(() -> axis.setTitle(title));
        axis.getOrAddShapeProperties().setLineProperties(line(WorkbookPalette.QUIET.rgb(), 0.75));
        XDDFRunProperties text = axis.getOrAddTextProperties();
        text.setFontSize(TEXT_POINTS);
        text.setFillProperties(fill(INK));
    }

    private static void cross(XDDFChartAxis x, XDDFChartAxis y) {
        x.setCrosses(AxisCrosses.MIN);
        y.setCrosses(AxisCrosses.MIN);
    }

    /** Adds points without a line. */
    public void points(String name, SeriesStyle style, ChartCells across, ChartCells up) {
        var series = (XDDFScatterChartData.Series) data.addSeries(across.numbers(), up.numbers());
        series.setTitle(name, null);
        series.setSmooth(false);
        series.setLineProperties(noLine());
        series.setMarkerStyle(style.marker);
        dress(series.getCTScatterSer().getMarker(), style);
    }

    /** Adds a line without points. */
    public void line(String name, int rgb, boolean dashed, ChartCells across, ChartCells up) {
        var series = (XDDFScatterChartData.Series) data.addSeries(across.numbers(), up.numbers());
        series.setTitle(name, null);
        series.setSmooth(false);
        series.setMarkerStyle(MarkerStyle.NONE);
        series.setLineProperties(dashed(rgb, dashed));
    }

    /** Adds a line over names, with or without marks. */
    public void line(String name, SeriesStyle style, boolean dashed, boolean marks, ChartCells names, ChartCells up) {
        var series = (XDDFLineChartData.Series) data.addSeries(names.words(), up.numbers());
        series.setTitle(name, null);
        series.setSmooth(false);
        series.setLineProperties(dashed(style.rgb, dashed));
        series.setMarkerStyle(marks ? style.marker : MarkerStyle.NONE);
        if (marks) {
            dress(series.getCTLineSer().getMarker(), style);
        }
    }

    /** Adds marks over names without a line. */
    void marks(String name, SeriesStyle style, ChartCells names, ChartCells up) {
        var series = (XDDFLineChartData.Series) data.addSeries(names.words(), up.numbers());
        series.setTitle(name, null);
        series.setSmooth(false);
        series.setLineProperties(noLine());
        series.setMarkerStyle(style.marker);
        dress(series.getCTLineSer().getMarker(), style);
    }

    /** Adds bars. */
    public void bar(String name, int rgb, ChartCells names, ChartCells up) {
        var series = (XDDFBarChartData.Series) data.addSeries(names.words(), up.numbers());
        series.setTitle(name, null);
        series.setInvertIfNegative(false);
        XDDFShapeProperties style = new XDDFShapeProperties();
        style.setFillProperties(fill(rgb));
        style.setLineProperties(line(WorkbookPalette.PAPER.rgb(), 0.5));
        series.setShapeProperties(style);
    }

    private static XDDFLineProperties dashed(int rgb, boolean dashed) {
        XDDFLineProperties line = line(rgb, dashed ? 1.25 : 2);
        if (dashed) {
            line.setPresetDash(new XDDFPresetLineDash(PresetLineDash.DASH));
        }
        return line;
    }

    /** Sizes go in as an attribute: the small schema jar does not know their setters. */
    private static void dress(CTMarker marker, SeriesStyle style) {
        XDDFShapeProperties shape = new XDDFShapeProperties();
        shape.setFillProperties(fill(style.rgb));
        shape.setLineProperties(
                line(style.rgb, style == SeriesStyle.BREACHED || style == SeriesStyle.FIFTH ? 1.5 : 0.25));
        marker.setSpPr(shape.getXmlObject());
        value(marker.isSetSize() ? marker.getSize() : marker.addNewSize(), style.size);
    }

    private static void value(XmlObject element, int value) {
        try (var cursor = element.newCursor()) {
            cursor.setAttributeText(new QName("val"), Integer.toString(value));
        }
    }

    /** Draws what was added, with a legend below where it is wanted. */
    public void draw(boolean legend) {
        data.setVaryColors(false);
        chart.plot(data);
        CTChart inside = chart.getCTChart();
        (inside.isSetDispBlanksAs() ? inside.getDispBlanksAs() : inside.addNewDispBlanksAs())
                .setVal(STDispBlanksAs.GAP);
        (inside.isSetPlotVisOnly() ? inside.getPlotVisOnly() : inside.addNewPlotVisOnly()).setVal(false);
        for (var bars : inside.getPlotArea().getBarChartArray()) {
            value(bars.isSetGapWidth() ? bars.getGapWidth() : bars.addNewGapWidth(), gapPercent);
            value(bars.isSetOverlap() ? bars.getOverlap() : bars.addNewOverlap(), 100);
        }
        if (everyName) {
            for (var axis : inside.getPlotArea().getCatAxArray()) {
                showEveryName(axis);
            }
        }
        for (var axis : inside.getPlotArea().getValAxArray()) {
            axis.getNumFmt().setSourceLinked(false);
        }
        if (legend) {
            XDDFChartLegend below = chart.getOrAddLegend();
            below.setPosition(LegendPosition.BOTTOM);
            below.setOverlay(false);
        }
    }

    /** The small schema jar does not know this element at all; its place is before the last one. */
    private static void showEveryName(XmlObject axis) {
        try (var cursor = axis.newCursor()) {
            if (!cursor.toChild(new QName(CHART_SCHEMA, "noMultiLvlLbl"))) {
                cursor.toEndToken();
            }
            cursor.beginElement(new QName(CHART_SCHEMA, "tickLblSkip"));
            cursor.insertAttributeWithValue("val", "1");
        }
    }
}
