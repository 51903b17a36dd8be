package org.steelyard.report.table.season;

import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.find.DriftChart;
import org.steelyard.analyse.find.DriftChart.Week;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;
import org.steelyard.report.text.NumberText;

/** The weeks of a type's control chart of take-off CG. */
public final class DriftTable {

    private static final List<Column> COLUMNS = List.of(
            Column.of("week", "Week", ColumnKind.NAME),
            Column.of("flights", "Flights", ColumnKind.COUNT),
            Column.of("mean", "Mean CG", ColumnKind.PERCENT_MAC),
            Column.of("low", "Lower limit", ColumnKind.NUMBER),
            Column.of("high", "Upper limit", ColumnKind.NUMBER),
            Column.of("signal", "Signal", ColumnKind.STATUS));

    private DriftTable() {}

    /** The table; what lasts of the drift is its note. */
    public static DataTable of(DriftChart chart) {
        String title = String.format(
                Locale.ROOT,
                "%s: %s of %d outside the limits, %s. Mean %.2f %% MAC, sd within weeks %.2f, n = %,d",
                chart.typeId(),
                Counted.of(chart.signals().size(), "week"),
                chart.weeks().size(),
                chart.shift().isPresent() ? "one lasting shift" : "no lasting shift",
                chart.meanPercentMac(),
                chart.withinSd(),
                chart.flights());
        return DataTable.of(
                        title,
                        COLUMNS,
                        chart.weeks().stream().map(DriftTable::row).toList(),
                        "in time")
                .noting(chart.shift()
                        .map(shift -> shift.sentence() + " Chance " + NumberText.chance(shift.chance()) + ".")
                        .orElse(""));
    }

    private static List<TableCell> row(Week week) {
        CellEmphasis emphasis = week.signal() ? CellEmphasis.MARGINAL : CellEmphasis.NONE;
        String signal = !week.signal() ? "" : week.meanPercentMac() > week.highPercentMac() ? "aft" : "forward";
        return List.of(
                TableCell.text(week.week()),
                TableCell.count(week.flights()),
                TableCell.number(week.meanPercentMac(), 2).with(emphasis),
                TableCell.number(week.lowPercentMac(), 2),
                TableCell.number(week.highPercentMac(), 2),
                TableCell.text(signal).with(emphasis));
    }
}
