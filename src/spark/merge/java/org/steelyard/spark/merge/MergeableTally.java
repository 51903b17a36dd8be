package org.steelyard.spark.merge;

import java.io.Serializable;
import java.time.YearMonth;
import java.time.temporal.ChronoField;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.FlightMeasures;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.column.StatusTally;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.find.StatisticsTally;
import org.steelyard.analyse.find.UnusualFlights;
import org.steelyard.analyse.part.LoadParts;
import org.steelyard.analyse.part.PartFigures;
import org.steelyard.analyse.part.PartMeans;
import org.steelyard.analyse.part.PartTallies;
import org.steelyard.analyse.part.PartTally;
import org.steelyard.analyse.season.SeasonCounts;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.analyse.season.WorstFlights;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.type.AircraftType;

/**
 * What the summary of a season needs of some of its flights, in memory that grows with the number of groups and not
 * with that of flights. Such tallies of parts of a season are merged in any order. Counts, means, standard deviations,
 * least and greatest do not depend on the parts; percentiles are exact for up to 4,096 flights of a group and within
 * {@link #rankError} beyond.
 */
public final class MergeableTally implements Serializable {

    private static final long serialVersionUID = 1;

    /** A group of some kind within a type or setting. */
    record Place(String grouping, Object within, Object group) implements Serializable, Comparable<Place> {

        private static final Comparator<Place> ORDER = Comparator.comparing(Place::grouping)
                .thenComparing(place -> place.within().toString())
                .thenComparing(place -> place.group().toString());

        @Override
        public int compareTo(Place other) {
            return ORDER.compare(this, other);
        }
    }

    private final RankSketch.Maker maker;
    private final List<String> named;
    private final SeasonCounts counts;
    private final StatusTally<String> types = new StatusTally<>();
    private final StatusTally<String> tails = new StatusTally<>();
    private final StatusTally<String> routes = new StatusTally<>();
    private final StatusTally<Long> months = new StatusTally<>();
    private final Map<Place, Map<Measure, MergeableValues>> values = new HashMap<>();
    private final Map<String, Set<Object>> groups = new LinkedHashMap<>();
    private final Map<String, PartTally> partsByType = new HashMap<>();
    private final Map<TrimSetting, PartTally> partsBySetting = new HashMap<>();
    private final Map<Place, PartMeans> partsByGroup = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private final SortedSet<String> leftOut = new TreeSet<>();
    private transient Map<String, LoadParts> loadParts;
    private transient List<GroupKind<String>> namedKinds;

    /**
     * A tally of no flights.
     *
     * @param policy the operator's rules
     * @param by headings of carried columns by which statistics are grouped, too
     * @param maker makes sketches for groups of many flights
     */
    public MergeableTally(Policy policy, List<String> by, RankSketch.Maker maker) {
        this.maker = maker;
        counts = new SeasonCounts(policy);
        List<String> names = new ArrayList<>();
        for (String name : SeasonTally.columns(policy, by)) {
            if (names.stream().noneMatch(name::equalsIgnoreCase)) {
                names.add(name);
            }
        }
        named = List.copyOf(names);
    }

    /**
     * Takes a flight.
     *
     * @param flight the flight
     */
    public void add(AuditedFlight flight) {
        Loading loading = flight.loading();
        Status status = flight.assessment().status();
        counts.add(flight, status);
        types.add(loading.type().id(), status);
        tails.add(loading.tail().registration(), status);
        months.add(loading.flight().date().getLong(ChronoField.PROLEPTIC_MONTH), status);
        addGroups(flight, status);
    }

    private void addGroups(AuditedFlight flight, Status status) {
        Loading loading = flight.loading();
        AircraftType type = loading.type();
        TrimSetting setting = TrimSetting.of(flight);
        String route = GroupKind.ROUTE.of(flight);
        if (!route.isEmpty() && isKept(GroupKind.ROUTE.id())) {
            routes.add(route, status);
        }
        Map<Measure, Double> figures = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            FlightMeasures.of(flight, measure).ifPresent(value -> figures.put(measure, value));
        }
        Optional<PartFigures> parts =
                LoadParts.areKnown(flight) ? Optional.of(PartFigures.of(flight, loadParts(type))) : Optional.empty();
        addParts(parts, type, setting, figures);
        One one = new One(figures, parts, setting, status);
        for (GroupKind<?> kind : GroupKind.ALL) {
            add(kind, kind.of(flight), one);
        }
        for (GroupKind<String> kind : namedKinds()) {
            Optional<String> value = GroupKind.carried(flight, kind.name());
            value.ifPresent(given -> seen.add(kind.name()));
            add(kind, value.orElse(""), one);
        }
    }

    private record One(Map<Measure, Double> figures, Optional<PartFigures> parts, TrimSetting setting, Status status) {}

    private List<GroupKind<String>> namedKinds() {
        if (namedKinds == null) {
            namedKinds = named.stream().map(GroupKind::named).toList();
        }
        return namedKinds;
    }

    private LoadParts loadParts(AircraftType type) {
        if (loadParts == null) {
            loadParts = new HashMap<>();
        }
        return loadParts.computeIfAbsent(type.id(), id -> new LoadParts(type));
    }

    private void addParts(
            Optional<PartFigures> parts, AircraftType type, TrimSetting setting, Map<Measure, Double> figures) {
        if (parts.isPresent()) {
            int size = loadParts(type).size();
            Double trim = figures.get(Measure.TAKEOFF_TRIM);
            double[] all = parts.get().all();
            partsByType
                    .computeIfAbsent(type.id(), absent -> new PartTally(size))
                    .add(parts.get(), all, OptionalDouble.empty());
            partsBySetting
                    .computeIfAbsent(setting, absent -> new PartTally(size))
                    .add(parts.get(), all, trim == null ? OptionalDouble.empty() : OptionalDouble.of(trim));
        }
    }

    private boolean isKept(String grouping) {
        return !leftOut.contains(grouping);
    }

    private void add(GroupKind<?> kind, Object group, One one) {
        String grouping = kind.id();
        if (!isKept(grouping)) {
            return;
        }
        Set<Object> known = groups.computeIfAbsent(grouping, absent -> new HashSet<>());
        if (known.add(group) && known.size() > GroupNames.MOST_GROUPS) {
            leaveOut(grouping);
            return;
        }
        Place inType = new Place(grouping, one.setting.typeId(), group);
        one.figures.forEach((measure, value) -> {
            if (measure == Measure.TAKEOFF_CG || kind != GroupKind.WEEK) {
                Place place = measure.byFlaps() ? new Place(grouping, one.setting, group) : inType;
                at(place, measure).add(value, one.status);
            }
        });
        if (kind.isExplained() && one.parts.isPresent()) {
            double[] figures = one.parts.get().all();
            partsByGroup
                    .computeIfAbsent(inType, absent -> new PartMeans(figures.length / 2))
                    .add(figures);
        }
    }

    private MergeableValues at(Place place, Measure measure) {
        return values.computeIfAbsent(place, absent -> new EnumMap<>(Measure.class))
                .computeIfAbsent(measure, absent -> new MergeableValues(measure, maker));
    }

    /** A grouping with more groups than anybody looks at is none. */
    private void leaveOut(String grouping) {
        leftOut.add(grouping);
        groups.remove(grouping);
        values.keySet().removeIf(place -> place.grouping().equals(grouping));
        partsByGroup.keySet().removeIf(place -> place.grouping().equals(grouping));
        if (grouping.equals(GroupKind.ROUTE.id())) {
            routes.clear();
        }
    }

    /**
     * Takes the flights of another tally, which stays as it is.
     *
     * @param other a tally with the same columns and rules
     */
    public void merge(MergeableTally other) {
        counts.merge(other.counts);
        types.merge(other.types);
        tails.merge(other.tails);
        routes.merge(other.routes);
        months.merge(other.months);
        other.values.forEach((place, theirs) ->
                theirs.forEach((measure, figures) -> at(place, measure).merge(figures)));
        other.partsByType.forEach((key, sums) -> partsByType
                .computeIfAbsent(key, absent -> new PartTally(sums.parts()))
                .merge(sums));
        other.partsBySetting.forEach((key, sums) -> partsBySetting
                .computeIfAbsent(key, absent -> new PartTally(sums.parts()))
                .merge(sums));
        other.partsByGroup.forEach((key, sums) -> partsByGroup
                .computeIfAbsent(key, absent -> new PartMeans(sums.parts()))
                .add(sums));
        other.groups.forEach((grouping, theirs) ->
                groups.computeIfAbsent(grouping, absent -> new HashSet<>()).addAll(theirs));
        seen.addAll(other.seen);
        Set<String> out = new TreeSet<>(leftOut);
        out.addAll(other.leftOut);
        groups.forEach((grouping, known) -> {
            if (known.size() > GroupNames.MOST_GROUPS) {
                out.add(grouping);
            }
        });
        out.forEach(this::leaveOut);
    }

    /** How many flights were taken. */
    public long flights() {
        return counts.all().named("").flights();
    }

    /** Flights of a status. */
    public long flights(Status status) {
        StatusCount count = counts.all().named("");
        return switch (status) {
            case CLEAN -> count.clean();
            case MARGINAL -> count.marginal();
            case BREACHED -> count.breached();
        };
    }

    /** Up to how many flights of a group its percentiles are exact. */
    public static int exactUpTo() {
        return MergeableValues.HELD;
    }

    /** By how much, at most, the rank of a percentile of a greater group may be off; 0 where there is none. */
    public double rankError() {
        double most = 0;
        for (Map<Measure, MergeableValues> all : values.values()) {
            for (MergeableValues one : all.values()) {
                most = Math.max(most, one.rankError());
            }
        }
        return most;
    }

    /** Kinds of groups of which there were too many, in order of name. */
    public List<String> leftOut() {
        return leftOut.stream().map(GroupKind::nameOf).sorted().distinct().toList();
    }

    /** Groups of one kind. */
    Set<Object> groups(String grouping) {
        return groups.getOrDefault(grouping, Set.of());
    }

    Optional<MergeableValues> values(Place place, Measure measure) {
        return Optional.ofNullable(values.getOrDefault(place, Map.of()).get(measure));
    }

    List<String> named() {
        return named.stream().filter(name -> isKept(GroupKind.named(name).id())).toList();
    }

    List<String> missing() {
        return flights() == 0
                ? List.of()
                : named.stream().filter(name -> !seen.contains(name)).toList();
    }

    RankSketch.Maker maker() {
        return maker;
    }

    private static String month(long sinceYearZero) {
        return YearMonth.of(0, 1).plusMonths(sinceYearZero).toString();
    }

    /**
     * What the season comes to.
     *
     * @param types types by id
     * @param shown the flights that a {@link FlightChoice} chose, in order of place
     * @return the summary of all flights taken
     */
    public SeasonSummary summary(Map<String, AircraftType> types, List<PlacedFlight> shown) {
        MergedFigures figures = new MergedFigures(this);
        PartTallies parts = parts(figures, types);
        FlightColumns columns = new FlightColumns(List.of());
        UnusualFlights unusual = new UnusualFlights(columns);
        WorstFlights worst = new WorstFlights(SeasonTally.WORST);
        long[] places = new long[shown.size()];
        for (PlacedFlight placed : shown) {
            AuditedFlight flight = placed.flight();
            places[columns.flights()] = placed.place();
            columns.add(flight, flight.assessment().status());
            unusual.add(
                    flight,
                    LoadParts.areKnown(flight)
                            ? Optional.of(PartFigures.of(
                                    flight, loadParts(flight.loading().type())))
                            : Optional.empty());
            worst.add(flight);
        }
        return new SeasonSummary(
                counts.all().named("all"),
                this.types.counts(type -> type, StatusCount.BY_NAME),
                tails.counts(tail -> tail, StatusCount.WORST_FIRST),
                routes.counts(route -> route, StatusCount.WORST_FIRST),
                counts.findings().counts(),
                counts.trim().groups(figures),
                worst.worstFirst(),
                months.counts(MergeableTally::month, StatusCount.IN_TIME),
                counts.recordedTrim().groups(leftOut()),
                StatisticsTally.statistics(
                        figures, parts, unusual, new FlightCloud(columns, figures, flight -> places[flight])),
                counts.likelyOutside());
    }

    private PartTallies parts(MergedFigures figures, Map<String, AircraftType> types) {
        PartTallies parts = new PartTallies(figures);
        partsByType.forEach((id, sums) -> parts.put(new LoadParts(types.get(id)), sums));
        partsBySetting.forEach(parts::put);
        partsByGroup.forEach((place, sums) -> parts.put(figures.key(place), sums));
        return parts;
    }
}
