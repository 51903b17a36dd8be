package org.steelyard.report.table.season;

import java.util.ArrayList;
import java.util.List;
import org.steelyard.analyse.part.SpreadDrivers;
import org.steelyard.analyse.part.SpreadDrivers.Driver;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** What drives the spread of take-off CG or trim: each part of the load by its share of the variance. */
public final class DriverTable {

    private static final double WORTH_A_LINE = 5e-4;
    private static final List<Column> COLUMNS = List.of(
            Column.of("part", "Part of the load", ColumnKind.NAME),
            Column.of("share", "Share of the variance", ColumnKind.SHARE),
            Column.of("mass", "Mean mass", ColumnKind.MASS, "kg"),
            Column.of("pull", "Mean pull", ColumnKind.PERCENT_MAC));

    private DriverTable() {}

    public static DataTable of(SpreadDrivers drivers) {
        List<List<TableCell>> rows = new ArrayList<>();
        for (Driver driver : drivers.drivers()) {
            if (Math.abs(driver.share()) >= WORTH_A_LINE || Math.abs(driver.meanMassKg()) >= 0.5) {
                rows.add(List.of(
                        TableCell.text(driver.part()),
                        TableCell.share(driver.share()),
                        TableCell.number(driver.meanMassKg(), 0),
                        TableCell.signed(driver.meanPullPercentMac(), 2)));
            }
        }
        if (Math.abs(drivers.scaleShare()) > WORTH_A_LINE) {
            rows.add(List.of(
                    TableCell.text("the scale itself: bends, mass"),
                    TableCell.share(drivers.scaleShare()),
                    TableCell.missing(),
                    TableCell.missing()));
        }
        return DataTable.of(drivers.sentence(), COLUMNS, rows, "the greatest share first");
    }
}
