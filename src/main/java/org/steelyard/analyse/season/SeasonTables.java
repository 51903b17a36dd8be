package org.steelyard.analyse.season;

import java.util.List;
import java.util.Optional;
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
     * How take-off trim spreads.
     *
     * @param summary the season
     * @return a row for each type, flap setting and thrust rating of a scale with columns {@code type, flaps, thrust,
     *     n, mean, sd, min, p5, p25, median, p75, p95, max}; trim in units, nose-up positive; groups without any trim
     *     have n = 0 and no figures
     */
    public static Table trimSpread(SeasonSummary summary) {
        return spread("Take-off trim", summary.trim(), TrimGroup::trimUnits);
    }

    /**
     * How take-off CG spreads.
     *
     * @param summary the season
     * @return the same columns as {@link #trimSpread}; CG in % MAC
     */
    public static Table cgSpread(SeasonSummary summary) {
        return spread("Take-off CG", summary.trim(), group -> Optional.of(group.cgPercentMac()));
    }

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
        List<Optional<Spread>> spreads =
                rows.stream().map(row -> Optional.of(row.spread())).toList();
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
        return addFigures(table, spreads)
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

    private static Table spread(String name, List<TrimGroup> groups, Function<TrimGroup, Optional<Spread>> spread) {
        List<Optional<Spread>> spreads = groups.stream().map(spread).toList();
        Table table = Table.create(name)
                .addColumns(
                        StringColumn.create(
                                "type", groups.stream().map(TrimGroup::typeId).toList()),
                        StringColumn.create(
                                "flaps", groups.stream().map(TrimGroup::flaps).toList()),
                        StringColumn.create(
                                "thrust", groups.stream().map(TrimGroup::thrust).toList()),
                        LongColumn.create(
                                "n",
                                spreads.stream()
                                        .mapToLong(s -> s.map(Spread::n).orElse(0L))
                                        .toArray()));
        return addFigures(table, spreads);
    }

    private static Table addFigures(Table table, List<Optional<Spread>> spreads) {
        return table.addColumns(
                figure("mean", spreads, Spread::mean),
                optionalFigure("sd", spreads, Spread::sd),
                figure("min", spreads, Spread::min),
                figure("p5", spreads, Spread::p5),
                figure("p25", spreads, Spread::p25),
                figure("median", spreads, Spread::median),
                figure("p75", spreads, Spread::p75),
                figure("p95", spreads, Spread::p95),
                figure("max", spreads, Spread::max));
    }

    private static DoubleColumn figure(String name, List<Optional<Spread>> spreads, ToDoubleFunction<Spread> figure) {
        return optionalFigure(name, spreads, spread -> OptionalDouble.of(figure.applyAsDouble(spread)));
    }

    private static DoubleColumn optionalFigure(
            String name, List<Optional<Spread>> spreads, Function<Spread, OptionalDouble> figure) {
        DoubleColumn column = DoubleColumn.create(name);
        for (Optional<Spread> spread : spreads) {
            append(column, spread.map(figure).orElse(OptionalDouble.empty()));
        }
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
