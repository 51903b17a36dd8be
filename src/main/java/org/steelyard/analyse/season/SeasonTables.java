package org.steelyard.analyse.season;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import org.steelyard.analyse.figure.Spread;
import org.steelyard.analyse.figure.TypicalRange;
import org.steelyard.analyse.find.GroupSpread;
import tech.tablesaw.api.DoubleColumn;
import tech.tablesaw.api.LongColumn;
import tech.tablesaw.api.StringColumn;
import tech.tablesaw.api.Table;

/**
 * A season's summary as tables that outputs can write row by row. The figures are the summary's own; the table library
 * computes none of them. An empty cell is a missing value.
 */
public final class SeasonTables {

    private static final int ROWS = 1000;

    private SeasonTables() {}

    /**
     * How each measure spreads by each grouping: tables of at most {@value #ROWS} rows, as the library finds the texts
     * of a column in an open hash table, which takes each by each where all have the same hash code.
     *
     * @param summary the season
     * @return tables, at least one, each made when it is asked for. A row for each group with columns {@code grouping,
     *     type, flaps, thrust, group, measure, unit, n, mean, sd, min, p5, p25, median, p75, p95, max}, the 95 %
     *     intervals {@code p5_from, p5_to, p95_from, p95_to} of the ends of the typical range, missing where there are
     *     too few flights, {@code share_marginal, share_breached} from 0 to 1 and {@code few}, which says yes or no
     */
    public static Iterable<Table> groupSpreads(SeasonSummary summary) {
        List<GroupSpread> all = summary.statistics().spreads();
        int tables = Math.max(1, (all.size() + ROWS - 1) / ROWS);
        return () -> IntStream.range(0, tables)
                .mapToObj(i -> groupSpreads(all.subList(i * ROWS, Math.min(all.size(), (i + 1) * ROWS))))
                .iterator();
    }

    private static Table groupSpreads(List<GroupSpread> rows) {
        Table table = Table.create("Statistics")
                .addColumns(
                        words("grouping", rows, GroupSpread::grouping),
                        words("type", rows, GroupSpread::typeId),
                        words("flaps", rows, GroupSpread::flaps),
                        words("thrust", rows, GroupSpread::thrust),
                        words("group", rows, GroupSpread::group),
                        words("measure", rows, row -> row.measure().label()),
                        words("unit", rows, row -> row.measure().unit()),
                        LongColumn.create(
                                "n",
                                rows.stream().mapToLong(row -> row.spread().n()).toArray()));
        return addFigures(table, rows)
                .addColumns(
                        bound("p5_from", rows, TypicalRange::lowFrom),
                        bound("p5_to", rows, TypicalRange::lowTo),
                        bound("p95_from", rows, TypicalRange::highFrom),
                        bound("p95_to", rows, TypicalRange::highTo),
                        DoubleColumn.create(
                                "share_marginal",
                                rows.stream()
                                        .mapToDouble(GroupSpread::shareMarginal)
                                        .toArray()),
                        DoubleColumn.create(
                                "share_breached",
                                rows.stream()
                                        .mapToDouble(GroupSpread::shareBreached)
                                        .toArray()),
                        words("few", rows, row -> row.few() ? "yes" : "no"));
    }

    private static StringColumn words(String name, List<GroupSpread> rows, Function<GroupSpread, String> word) {
        return StringColumn.create(name, rows.stream().map(word).toList());
    }

    private static DoubleColumn bound(
            String name, List<GroupSpread> rows, Function<TypicalRange, OptionalDouble> bound) {
        DoubleColumn column = DoubleColumn.create(name);
        rows.forEach(row -> append(column, bound.apply(row.range())));
        return column;
    }

    private static Table addFigures(Table table, List<GroupSpread> rows) {
        return table.addColumns(
                figure("mean", rows, Spread::mean),
                optionalFigure("sd", rows, Spread::sd),
                figure("min", rows, Spread::min),
                figure("p5", rows, Spread::p5),
                figure("p25", rows, Spread::p25),
                figure("median", rows, Spread::median),
                figure("p75", rows, Spread::p75),
                figure("p95", rows, Spread::p95),
                figure("max", rows, Spread::max));
    }

    private static DoubleColumn figure(String name, List<GroupSpread> rows, ToDoubleFunction<Spread> figure) {
        return optionalFigure(name, rows, spread -> OptionalDouble.of(figure.applyAsDouble(spread)));
    }

    private static DoubleColumn optionalFigure(
            String name, List<GroupSpread> rows, Function<Spread, OptionalDouble> figure) {
        DoubleColumn column = DoubleColumn.create(name);
        rows.forEach(row -> append(column, figure.apply(row.spread())));
        return column;
    }

    private static void append(DoubleColumn column, OptionalDouble value) {
        if (value.isPresent()) {
            column.append(value.getAsDouble());
        } else {
            column.appendMissing();
        }
    }
}
