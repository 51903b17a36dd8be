package org.steelyard.report.table.season;

import java.util.List;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** Typical take-off trim by type and flap setting: the middle and the ends of nine flights in ten. */
public final class TypicalTrimTable {

    private static final List<Column> COLUMNS = List.of(
            Column.of("type", "Type", ColumnKind.TEXT),
            Column.of("flaps", "Flaps", ColumnKind.TEXT),
            Column.of("flights", "Flights", ColumnKind.COUNT),
            Column.of("p5", "5 %", ColumnKind.TRIM),
            Column.of("median", "Median", ColumnKind.TRIM),
            Column.of("p95", "95 %", ColumnKind.TRIM),
            Column.of("cg", "CG median", ColumnKind.PERCENT_MAC));

    private TypicalTrimTable() {}

    public static DataTable of(SeasonSummary season) {
        List<List<TableCell>> rows = season.trim().stream()
                .flatMap(group -> group.trimUnits().map(trim -> row(group, trim)).stream())
                .toList();
        return DataTable.of("Typical take-off trim", COLUMNS, rows, "")
                .orElse("No flight has a trim: its type has no scale, or no flap setting was given.");
    }

    private static List<TableCell> row(TrimGroup group, Spread trim) {
        return List.of(
                TableCell.text(group.typeId()),
                TableCell.text(group.flapsShown()),
                TableCell.count(trim.n()),
                TableCell.trim(trim.p5(), 2, group.unit()),
                TableCell.trim(trim.median(), 2, group.unit()),
                TableCell.trim(trim.p95(), 2, group.unit()),
                TableCell.number(group.cgPercentMac().median(), 1));
    }
}
