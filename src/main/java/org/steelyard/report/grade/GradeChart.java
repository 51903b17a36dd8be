package org.steelyard.report.grade;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFNoFillProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFClientAnchor;
import org.apache.poi.xssf.usermodel.XSSFSheet;
import org.steelyard.report.book.ChartWords;
import org.steelyard.report.book.WorkbookPalette;

/** The spread of scores as a native chart: how many sheets in each tenth of the points. */
final class GradeChart {

    private static final int GAP_PERCENT = 30;

    private GradeChart() {}

    /** Draws over the columns given, from the heading row on; bands stand in column 1, counts in column 2. */
    static void scores(XSSFSheet sheet, int headRow, int bands, int fromColumn, int toColumn, int rows) {
        XSSFClientAnchor anchor =
                new XSSFClientAnchor(0, 0, 0, 0, fromColumn, headRow, toColumn + 1, headRow + rows - 3);
        XSSFChart chart = sheet.createDrawingPatriarch().createChart(anchor);
        ChartWords.inEnglish(() -> chart.setTitleText("Sheets by share of the points"));
        chart.setTitleOverlay(false);
        XDDFCategoryAxis bottom = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
        left.setCrosses(AxisCrosses.AUTO_ZERO);
        left.setCrossBetween(AxisCrossBetween.BETWEEN);
        left.setMinimum(0);
        left.setNumberFormat("0");
        XDDFLineProperties rule = new XDDFLineProperties(new XDDFSolidFillProperties(color(WorkbookPalette.RULE)));
        left.getOrAddMajorGridProperties().setLineProperties(rule);
        left.getOrAddShapeProperties().setLineProperties(new XDDFLineProperties(new XDDFNoFillProperties()));
        XDDFBarChartData data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, bottom, left);
        data.setBarDirection(BarDirection.COL);
        data.setGapWidth(GAP_PERCENT);
        data.setVaryColors(false);
        XDDFChartData.Series series = data.addSeries(
                XDDFDataSourcesFactory.fromStringCellRange(
                        sheet, new CellRangeAddress(headRow + 1, headRow + bands, 1, 1)),
                XDDFDataSourcesFactory.fromNumericCellRange(
                        sheet, new CellRangeAddress(headRow + 1, headRow + bands, 2, 2)));
        series.setTitle("sheets", null);
        series.setFillProperties(new XDDFSolidFillProperties(color(WorkbookPalette.SLATE)));
        chart.plot(data);
    }

    private static XDDFColor color(WorkbookPalette palette) {
        int rgb = palette.rgb();
        return XDDFColor.from(new byte[] {(byte) (rgb >> 16), (byte) (rgb >> 8), (byte) rgb});
    }
}
