package org.steelyard.report.book;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;

/**
 * Cells of one column that a chart draws. The chart keeps their address alone, so that it follows the cells when they
 * change, and nothing that was streamed to disk need be held.
 *
 * @param sheet name of the sheet
 * @param column column
 * @param first first row
 * @param last last row
 */
public record ChartCells(String sheet, int column, int first, int last) {

    public ChartCells {
        if (last < first) {
            throw new IllegalArgumentException("a chart needs cells: rows " + first + " to " + last);
        }
    }

    int count() {
        return last - first + 1;
    }

    XDDFNumericalDataSource<Double> numbers() {
        return XDDFDataSourcesFactory.fromArray(new Double[0], address(), column);
    }

    XDDFDataSource<String> words() {
        return XDDFDataSourcesFactory.fromArray(new String[0], address(), column);
    }

    private String address() {
        return new CellRangeAddress(first, last, column, column).formatAsString(sheet, true);
    }
}
