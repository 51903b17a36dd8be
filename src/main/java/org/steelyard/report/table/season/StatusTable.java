package org.steelyard.report.table.season;

import java.util.List;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.report.output.LeftOutGroupings;
import org.steelyard.report.table.CellEmphasis;
import org.steelyard.report.table.Column;
import org.steelyard.report.table.ColumnKind;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

/** Breached and marginal flights by a grouping. */
public enum StatusTable {
    /** Those with a breached flight. */
    TAILS("Tails by share breached", "Tail"),
    /** Those with a breached flight. */
    ROUTES("Routes by share breached", "Route"),
    TYPES("Types", "Type"),
    MONTHS("Breached and marginal flights by month", "Month");

    private static final String WORST_FIRST =
            "the greatest share breached first, those of fewer than " + Spread.FEW + " flights last";

    private final String title;
    private final String group;

    StatusTable(String title, String group) {
        this.title = title;
        this.group = group;
    }

    public DataTable of(SeasonSummary season) {
        List<Column> columns = List.of(
                Column.of("group", group, ColumnKind.NAME),
                Column.of("flights", "Flights", ColumnKind.COUNT),
                Column.of("breached", "Breached", ColumnKind.COUNT),
                Column.of("marginal", "Marginal", ColumnKind.COUNT),
                Column.of("share_breached", "Share", ColumnKind.SHARE),
                Column.of("share_marginal", "Share", ColumnKind.SHARE),
                Column.of("few", "", ColumnKind.TEXT));
        boolean offenders = this == TAILS || this == ROUTES;
        List<List<TableCell>> rows = counts(season).stream()
                .filter(count -> !offenders || count.breached() > 0)
                .map(StatusTable::row)
                .toList();
        String leftOut = this == ROUTES ? LeftOutGroupings.routes(season) : "";
        return DataTable.of(title, columns, rows, offenders ? WORST_FIRST : "")
                .orElse(leftOut.isEmpty() ? "None has a breached flight." : leftOut);
    }

    private List<StatusCount> counts(SeasonSummary season) {
        return switch (this) {
            case TAILS -> season.tails();
            case ROUTES -> season.routes();
            case TYPES -> season.types();
            case MONTHS -> season.months();
        };
    }

    private static List<TableCell> row(StatusCount count) {
        return List.of(
                TableCell.text(count.group()),
                TableCell.count(count.flights()),
                TableCell.count(count.breached()),
                TableCell.count(count.marginal()),
                TableCell.share(count.breached(), count.flights()),
                TableCell.share(count.marginal(), count.flights()),
                TableCell.text(count.few() ? "few flights" : "").with(CellEmphasis.QUIET));
    }
}
