package org.steelyard.analyse.column;

import it.unimi.dsi.fastutil.longs.Long2LongOpenHashMap;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.steelyard.analyse.column.GroupKind.Week;
import org.steelyard.analyse.figure.Ascending;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.type.AircraftType;

/**
 * The season as columns of primitives: four numbers, three masses and the groups of every flight, some 55 bytes
 * together. What is written out once (types, tails, routes) stands in the columns as a position of one or two bytes.
 */
public final class FlightColumns implements SeasonFigures {

    private static final List<Status> STATUSES = List.of(Status.values());

    private final Map<GroupKind<?>, GroupColumn<?>> columns = new LinkedHashMap<>();
    private final Map<String, GroupColumn<String>> named = new LinkedHashMap<>();
    private final Map<String, Boolean> seen = new LinkedHashMap<>();
    private final SortedSet<String> leftOut = new TreeSet<>();
    private final Map<String, AircraftType> typesById = new LinkedHashMap<>();
    private final Map<Measure, NumberColumn> measures = new EnumMap<>(Measure.class);
    private final Map<Phase, MassColumn> massesKg = new EnumMap<>(Phase.class);
    private final Map<LocalDate, Day> days = new HashMap<>();
    private final List<GroupColumn<?>> withinTypes = new ArrayList<>();

    /** Of these there may be too many; months and weeks are few, as flights have a year from 1900 to 2199. */
    private final List<GroupColumn<?>> open = new ArrayList<>();

    private final CodeColumn statuses = new CodeColumn();
    private Measure ascendingBy = Measure.TAKEOFF_CG;
    private Ascending ascending = new Ascending();

    /**
     * Empty columns.
     *
     * @param by headings of carried columns by which to group, in any case of letters
     */
    public FlightColumns(List<String> by) {
        GroupKind.ALL.forEach(kind -> columns.put(kind, new GroupColumn<>(kind)));
        for (String name : by) {
            if (named.keySet().stream().noneMatch(name::equalsIgnoreCase)) {
                GroupKind<String> kind = GroupKind.named(name);
                named.put(name, new GroupColumn<>(kind));
                seen.put(name, false);
            }
        }
        List<GroupColumn<?>> all = new ArrayList<>(columns.values());
        all.addAll(named.values());
        for (GroupColumn<?> column : all) {
            if (column.kind().isExplained()) {
                withinTypes.add(column);
            }
            if (column.kind().isOpen()) {
                open.add(column);
            }
        }
        for (Measure measure : Measure.values()) {
            measures.put(measure, new NumberColumn());
        }
        for (Phase phase : List.of(Phase.ZERO_FUEL, Phase.TAKEOFF, Phase.LANDING)) {
            massesKg.put(phase, new MassColumn());
        }
    }

    public void add(AuditedFlight flight, Status status) {
        AircraftType type = flight.loading().type();
        typesById.putIfAbsent(type.id(), type);
        columns.forEach((kind, column) -> {
            if (kind != GroupKind.MONTH && kind != GroupKind.WEEK) {
                column.add(flight);
            }
        });
        addTime(flight);
        named.forEach((name, column) -> {
            column.add(flight);
            seen.computeIfPresent(
                    name,
                    (key, found) -> found || GroupKind.carried(flight, name).isPresent());
        });
        leaveOutWhatIsTooMany();
        addNumbers(flight);
        statuses.add(STATUSES.indexOf(status));
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
        if (column.kind() != GroupKind.TAIL) {
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

    private void addTime(AuditedFlight flight) {
        GroupColumn<YearMonth> months = column(GroupKind.MONTH);
        GroupColumn<Week> weeks = column(GroupKind.WEEK);
        Day day = days.computeIfAbsent(
                flight.loading().flight().date(),
                date -> new Day(months.make(GroupKind.MONTH.of(flight)), weeks.make(GroupKind.WEEK.of(flight))));
        months.add(day.month());
        weeks.add(day.week());
    }

    private void addNumbers(AuditedFlight flight) {
        massesKg.forEach((phase, column) -> column.add(flight.balance().state(phase)));
        measures.forEach((measure, column) -> column.add(FlightMeasures.of(flight, measure)));
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
        return STATUSES.get(statuses.get(flight));
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
    public <K> GroupNames<K> groups(GroupKind<K> kind) {
        GroupColumn<K> column = column(kind);
        return kind == GroupKind.TAIL && !open.contains(column) ? column.others(List.of()) : column;
    }

    @Override
    public Grouped grouped(Measure measure, GroupNames<?> names) {
        if (isLeftOut(names)) {
            return new Buckets(new FlightColumns(List.of()), measure, flight -> 0, 0);
        }
        if (!(names instanceof GroupColumn<?> groups)) {
            throw new IllegalArgumentException(names.grouping() + " is no column of these flights");
        }
        GroupColumn<?> within = measure.byFlaps() ? column(GroupKind.SETTING) : column(GroupKind.TYPE);
        int width = groups.groups();
        return new Buckets(
                this, measure, flight -> within.of(flight) * width + groups.of(flight), within.groups() * width);
    }

    @Override
    public Grouped bySetting(Measure measure) {
        return bucketed(measure, column(GroupKind.SETTING));
    }

    @Override
    public Grouped byType(Measure measure) {
        return bucketed(measure, column(GroupKind.TYPE));
    }

    private Grouped bucketed(Measure measure, GroupColumn<?> groups) {
        return new Buckets(this, measure, groups::of, groups.groups());
    }

    @Override
    public HistogramCells cells(TrimSetting wanted, Measure measure, double width) {
        GroupColumn<TrimSetting> settings = column(GroupKind.SETTING);
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

    /** The groups of one of the kinds that every season has, flight by flight. */
    @SuppressWarnings("unchecked")
    public <K> GroupColumn<K> column(GroupKind<K> kind) {
        return (GroupColumn<K>) columns.get(kind);
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
