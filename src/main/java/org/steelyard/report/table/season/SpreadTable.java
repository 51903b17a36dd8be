package org.steelyard.report.table.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.TrimGroup;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** How take-off trim and CG spread by type and flap setting. */
public final class SpreadTable {

    public static final String METHOD = "UP is nose-up, DN nose-down. Percentiles by the inclusive method (definition 7"
            + " of Hyndman and Fan): linear between order statistics at rank 1 + p (n − 1). SD with divisor n − 1, none"
            + " for a single flight. Groups of fewer than " + Spread.FEW
            + " flights are marked: their figures say little.";

    private static final int WIDE = 14;
    private static final int NARROW = 9;

    private SpreadTable() {}

    public static DataTable trim(SeasonSummary season) {
        List<List<TableCell>> rows = season.trim().stream()
                .map(group -> row(group, group.trimUnits(), units -> TableCell.trim(units, 2, group.unit())))
                .toList();
        return DataTable.of("Take-off trim", columns(ColumnKind.TRIM), rows, "").orElse("No flights.");
    }

    public static DataTable cg(SeasonSummary season) {
        List<List<TableCell>> rows = season.trim().stream()
                .map(group -> row(group, Optional.of(group.cgPercentMac()), cg -> TableCell.number(cg, 2)))
                .toList();
        return DataTable.of("Take-off CG in % MAC", columns(ColumnKind.NUMBER), rows, "")
                .orElse("No flights.");
    }

    private static List<Column> columns(ColumnKind kind) {
        List<Column> columns = new ArrayList<>(List.of(
                Column.of("type", "Type", ColumnKind.TEXT).wide(WIDE),
                Column.of("flaps", "Flaps", ColumnKind.TEXT).wide(WIDE),
                Column.of("n", "n", ColumnKind.COUNT).wide(NARROW),
                Column.of("mean", "Mean", kind),
                Column.of("sd", "SD", ColumnKind.NUMBER)));
        for (String figure : List.of("Min", "P5", "P25", "Median", "P75", "P95", "Max")) {
            columns.add(Column.of(figure, figure, kind));
        }
        columns.add(Column.of("marginal", "Marginal", ColumnKind.COUNT));
        columns.add(Column.of("breached", "Breached", ColumnKind.COUNT));
        columns.add(Column.of("few", "", ColumnKind.TEXT));
        return columns;
    }

    private static List<TableCell> row(TrimGroup group, Optional<Spread> spread, DoubleFunction<TableCell> figure) {
        List<TableCell> row = new ArrayList<>(List.of(
                TableCell.text(group.typeId()),
                TableCell.text(group.flapsShown()),
                TableCell.count(spread.map(Spread::n).orElse(0L))));
        if (spread.isEmpty()) {
            row.add(TableCell.text("no scale").with(CellEmphasis.QUIET));
            for (int i = 0; i < 8; i++) {
                row.add(TableCell.missing());
            }
        } else {
            Spread s = spread.get();
            row.add(figure.apply(s.mean()));
            row.add(TableCell.number(s.sd(), 2));
            for (double value : new double[] {s.min(), s.p5(), s.p25(), s.median(), s.p75(), s.p95(), s.max()}) {
                row.add(figure.apply(value));
            }
        }
        row.add(TableCell.count(group.marginal()));
        row.add(TableCell.count(group.breached()));
        boolean few = spread.map(Spread::few).orElse(false);
        row.add(TableCell.text(few ? "few flights" : "").with(CellEmphasis.QUIET));
        return row;
    }
}
