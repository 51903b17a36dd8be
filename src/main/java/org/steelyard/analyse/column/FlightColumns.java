package org.steelyard.analyse.column;

import it.unimi.dsi.fastutil.longs.Long2LongOpenHashMap;
import java.io.Serializable;
import java.time.LocalDate;
import java.time.YearMonth;
import java.time.temporal.IsoFields;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.steelyard.analyse.figure.Ascending;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.unit.MassMoment;

/**
 * The season as columns of primitives: four numbers, three masses and the groups of every flight, some 55 bytes
 * together. What is written out once (types, tails, routes) stands in the columns as a position of one or two bytes.
 */
public final class FlightColumns implements SeasonFigures {

    /** An ISO week. */
    public record Week(int year, int week) implements Serializable {

        static final Comparator<Week> IN_TIME =
                Comparator.comparingInt(Week::year).thenComparingInt(Week::week);

        public static Week of(LocalDate date) {
            return new Week(date.get(IsoFields.WEEK_BASED_YEAR), date.get(IsoFields.WEEK_OF_WEEK_BASED_YEAR));
        }

        String label() {
            return year + (week < 10 ? "-W0" : "-W") + week;
        }
    }

    public final GroupColumn<String> types = GroupColumn.ofNames("type");
    public final GroupColumn<TrimSetting> settings = new GroupColumn<>(
            "flap setting", setting -> TrimSetting.shown(setting.flaps(), setting.thrust()), TrimSetting.BY_NAME);
    public final GroupColumn<String> tails = GroupColumn.ofNames("tail");
    public final GroupColumn<String> routes = GroupColumn.ofNames("route");
    public final GroupColumn<YearMonth> months =
            new GroupColumn<>("month", YearMonth::toString, Comparator.naturalOrder());
    public final GroupColumn<Week> weeks = new GroupColumn<>("week", Week::label, Week.IN_TIME);
    public final GroupColumn<Band> massBands = new GroupColumn<>("take-off mass", Band::label, Band.IN_ORDER);
    public final GroupColumn<Band> loadFactors = new GroupColumn<>("load factor", Band::label, Band.IN_ORDER);

    private final Map<String, GroupColumn<String>> named = new LinkedHashMap<>();
    private final Map<String, Boolean> seen = new LinkedHashMap<>();
    private final SortedSet<String> leftOut = new TreeSet<>();
    private final Map<String, AircraftType> typesById = new LinkedHashMap<>();
    private final Map<Measure, NumberColumn> measures = new EnumMap<>(Measure.class);
    private final Map<Phase, MassColumn> massesKg = new EnumMap<>(Phase.class);
    private final Map<LocalDate, Day> days = new HashMap<>();
    private final List<GroupColumn<?>> withinTypes = new ArrayList<>(List.of(tails, routes, weeks));

    /** Of these there may be too many; months and weeks are few, as flights have a year from 1900 to 2199. */
    private final List<GroupColumn<?>> open = new ArrayList<>(List.of(tails, routes, massBands, loadFactors));

    private final GroupColumn<Status> statuses = new GroupColumn<>("status", Status::label, Comparator.naturalOrder());
    private Measure ascendingBy = Measure.TAKEOFF_CG;
    private Ascending ascending = new Ascending();

    /**
     * Empty columns.
     *
     * @param by headings of carried columns by which to group, in any case of letters
     */
    public FlightColumns(List<String> by) {
        for (String name : by) {
            if (named.keySet().stream().noneMatch(name::equalsIgnoreCase)) {
                named.put(name, GroupColumn.ofNames(name));
                seen.put(name, false);
            }
        }
        withinTypes.addAll(named.values());
        open.addAll(named.values());
        for (Measure measure : Measure.values()) {
            measures.put(measure, new NumberColumn());
        }
        for (Phase phase : List.of(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.LANDING)) {
            massesKg.put(phase, new MassColumn());
        }
    }

    public void add(AuditedFlight flight, Status status) {
        Loading loading = flight.loading();
        AircraftType type = loading.type();
        typesById.putIfAbsent(type.id(), type);
        types.add(type.id());
        settings.add(TrimSetting.of(flight));
        tails.add(loading.tail().registration());
        routes.add(loading.flight().route());
        addTime(loading.flight());
        massBands.add(Band.ofMass(type, flight.balance().takeoff().massKg()));
        loadFactors.add(Band.ofLoadFactor(type, flight.balance().distribution()));
        named.forEach((name, column) -> column.add(value(loading, name)));
        leaveOutWhatIsTooMany();
        addNumbers(flight);
        statuses.add(status);
    }

    private void leaveOutWhatIsTooMany() {
        for (int i = open.size() - 1; i >= 0; i--) {
            if (open.get(i).groups() > GroupNames.MOST_GROUPS) {
                leaveOut(open.remove(i));
            }
        }
    }

    /** Lets go of a column; but pictures name the tails, of which there are no more than the fleet has. */
    private void leaveOut(GroupColumn<?> column) {
        leftOut.add(column.grouping());
        withinTypes.remove(column);
        named.values().remove(column);
        if (column != tails) {
            column.leaveOut();
        }
    }

    @Override
    public List<String> leftOut() {
        return List.copyOf(leftOut);
    }

    /** Positions of month and week; found once for each date, as months share few hash codes. */
    private record Day(int month, int week) {}

    /** The groupings that are looked at within each type. */
    public List<GroupColumn<?>> withinTypes() {
        return withinTypes;
    }

    private void addTime(FlightIdent ident) {
        Day day = days.computeIfAbsent(
                ident.date(), date -> new Day(months.make(YearMonth.from(date)), weeks.make(Week.of(date))));
        months.add(day.month());
        weeks.add(day.week());
    }

    private String value(Loading loading, String name) {
        for (Extra extra : loading.extras()) {
            if (extra.name().equalsIgnoreCase(name)) {
                seen.put(name, true);
                return extra.value();
            }
        }
        return "";
    }

    private void addNumbers(AuditedFlight flight) {
        Function<MassMoment, Double> percent =
                state -> flight.loading().type().geometry().chord().percentAt(state.armM());
        massesKg.forEach((phase, column) -> column.add(flight.balance().state(phase)));
        measures.get(Measure.TAKEOFF_CG).add(percent.apply(flight.balance().takeoff()));
        measures.get(Measure.ZERO_FUEL_CG).add(number(flight.balance().zeroFuel(), percent));
        measures.get(Measure.LANDING_CG).add(number(flight.balance().landing(), percent));
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        measures.get(Measure.TAKEOFF_TRIM).add(trim.isPresent() ? trim.get().trimUnits() : OptionalDouble.empty());
    }

    private static OptionalDouble number(Optional<MassMoment> state, Function<MassMoment, Double> percent) {
        return state.isPresent() ? OptionalDouble.of(percent.apply(state.get())) : OptionalDouble.empty();
    }

    public int flights() {
        return statuses.size();
    }

    AircraftType type(String id) {
        return typesById.get(id);
    }

    public NumberColumn of(Measure measure) {
        return measures.get(measure);
    }

    /**
     * The flights whose figure is known, by that figure. Those of the measure asked for last are kept, so who asks for
     * many groupings of a measure does so in a row. Safe for many threads while no flight is added.
     */
    synchronized Ascending ascending(Measure measure) {
        if (measure != ascendingBy || ascending.columnSize() != flights()) {
            ascending = new Ascending(); // let go before the next is made
            ascending = of(measure).ascending();
            ascendingBy = measure;
        }
        return ascending;
    }

    MassColumn massKg(Phase phase) {
        return massesKg.get(phase);
    }

    Status status(int flight) {
        return statuses.key(statuses.of(flight));
    }

    /** Counts all flights by status for each group of a column; none of one that is left out. */
    public <K> StatusTally<K> tally(GroupColumn<K> groups) {
        StatusTally<K> tally = new StatusTally<>();
        if (isLeftOut(groups)) {
            return tally;
        }
        List<StatusTally.Counts> counts = IntStream.range(0, groups.groups())
                .mapToObj(position -> tally.of(groups.key(position)))
                .toList();
        for (int flight = 0; flight < flights(); flight++) {
            counts.get(groups.of(flight)).add(status(flight));
        }
        return tally;
    }

    @Override
    public GroupColumn<String> types() {
        return types;
    }

    @Override
    public GroupColumn<TrimSetting> settings() {
        return settings;
    }

    @Override
    public GroupNames<String> tails() {
        return open.contains(tails) ? tails : tails.others(List.of());
    }

    @Override
    public GroupColumn<String> routes() {
        return routes;
    }

    @Override
    public GroupColumn<YearMonth> months() {
        return months;
    }

    @Override
    public GroupColumn<Week> weeks() {
        return weeks;
    }

    @Override
    public GroupColumn<Band> massBands() {
        return massBands;
    }

    @Override
    public GroupColumn<Band> loadFactors() {
        return loadFactors;
    }

    @Override
    public Grouped grouped(Measure measure, GroupNames<?> names) {
        if (isLeftOut(names)) {
            return new Buckets(new FlightColumns(List.of()), measure, flight -> 0, 0);
        }
        if (!(names instanceof GroupColumn<?> groups)) {
            throw new IllegalArgumentException(names.grouping() + " is no column of these flights");
        }
        GroupColumn<?> within = measure.byFlaps() ? settings : types;
        int width = groups.groups();
        return new Buckets(
                this, measure, flight -> within.of(flight) * width + groups.of(flight), within.groups() * width);
    }

    @Override
    public Grouped bySetting(Measure measure) {
        return new Buckets(this, measure, settings::of, settings.groups());
    }

    @Override
    public Grouped byType(Measure measure) {
        return new Buckets(this, measure, types::of, types.groups());
    }

    @Override
    public HistogramCells cells(TrimSetting wanted, Measure measure, double width) {
        int setting = settings.find(wanted);
        NumberColumn column = of(measure);
        Long2LongOpenHashMap counts = new Long2LongOpenHashMap();
        for (int flight = 0; flight < flights(); flight++) {
            if (settings.of(flight) == setting && column.knows(flight)) {
                counts.addTo(HistogramCells.cellOf(column.get(flight), width), 1);
            }
        }
        return HistogramCells.of(new TreeMap<>(counts), width);
    }

    /** The columns that the user named. */
    @Override
    public List<GroupColumn<String>> named() {
        return List.copyOf(named.values());
    }

    /** Columns that the user named and no flight has. */
    @Override
    public List<String> missing() {
        List<String> missing = new ArrayList<>();
        seen.forEach((name, found) -> {
            if (!found && flights() > 0) {
                missing.add(name);
            }
        });
        return missing;
    }
}
