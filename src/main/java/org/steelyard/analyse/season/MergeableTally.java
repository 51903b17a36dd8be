package org.steelyard.analyse.season;

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
import org.steelyard.analyse.column.Band;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.FlightColumns.Week;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.column.StatusTally;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.MergeableMoments;
import org.steelyard.analyse.figure.MergeableValues;
import org.steelyard.analyse.figure.RankSketch;
import org.steelyard.analyse.find.StatisticsTally;
import org.steelyard.analyse.find.UnusualFlights;
import org.steelyard.analyse.part.LoadParts;
import org.steelyard.analyse.part.PartFigures;
import org.steelyard.analyse.part.PartMeans;
import org.steelyard.analyse.part.PartTallies;
import org.steelyard.analyse.part.PartTally;
import org.steelyard.balance.TrimResult;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.loading.Extra;
import org.steelyard.model.loading.FlightIdent;
import org.steelyard.model.loading.Loading;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;
import org.steelyard.model.type.AircraftType;
import org.steelyard.model.type.MeanChord;
import org.steelyard.model.unit.MassMoment;

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

    private record Recorded(String kind, String name) implements Serializable, Comparable<Recorded> {

        private static final Comparator<Recorded> ORDER =
                Comparator.comparing(Recorded::kind).thenComparing(Recorded::name);

        @Override
        public int compareTo(Recorded other) {
            return ORDER.compare(this, other);
        }
    }

    private static final class RecordedSums implements Serializable {

        private static final long serialVersionUID = 1;

        private final MergeableMoments units = new MergeableMoments();
        private long noseUp;
        private long noseDown;
    }

    static final String WEEK = "week";

    private static final String TAIL = "tail";

    private static final String BY = "by ";

    private final RankSketch.Maker maker;
    private final List<String> named;
    private final StatusTally.Counts all = new StatusTally.Counts();
    private final StatusTally<String> types = new StatusTally<>();
    private final StatusTally<String> tails = new StatusTally<>();
    private final StatusTally<String> routes = new StatusTally<>();
    private final FindingTally findings = new FindingTally();
    private final StatusTally<Long> months = new StatusTally<>();
    private final TrimTally scales = new TrimTally();
    private final Map<Recorded, RecordedSums> recorded = new HashMap<>();
    private final Map<Place, Map<Measure, MergeableValues>> values = new HashMap<>();
    private final Map<String, Set<Object>> groups = new LinkedHashMap<>();
    private final Map<String, PartTally> partsByType = new HashMap<>();
    private final Map<TrimSetting, PartTally> partsBySetting = new HashMap<>();
    private final Map<Place, PartMeans> partsByGroup = new HashMap<>();
    private final Set<String> seen = new HashSet<>();
    private final SortedSet<String> leftOut = new TreeSet<>();
    private long likelyOutside;
    private transient Map<String, LoadParts> loadParts;

    /**
     * A tally of no flights.
     *
     * @param policy the operator's rules
     * @param by headings of carried columns by which statistics are grouped, too
     * @param maker makes sketches for groups of many flights
     */
    public MergeableTally(Policy policy, List<String> by, RankSketch.Maker maker) {
        this.maker = maker;
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
     * @param policy the operator's rules
     */
    public void add(AuditedFlight flight, Policy policy) {
        Loading loading = flight.loading();
        Status status = flight.assessment().status();
        all.add(status);
        types.add(loading.type().id(), status);
        tails.add(loading.tail().registration(), status);
        findings.add(flight.assessment().findings());
        months.add(loading.flight().date().getLong(ChronoField.PROLEPTIC_MONTH), status);
        scales.add(flight);
        addRecorded(flight, policy.recordedTrim().orElse(RecordedTrimTally.NOTHING_BEYOND));
        likelyOutside += SeasonTally.isLikelyOutside(flight, policy.chance()) ? 1 : 0;
        addGroups(flight, status);
    }

    private void addRecorded(AuditedFlight flight, RecordedTrimRule rule) {
        OptionalDouble difference = RecordedTrimTally.difference(flight);
        if (difference.isEmpty()) {
            return;
        }
        double units = difference.getAsDouble();
        String tail = flight.loading().tail().registration();
        if (isKept(TAIL)) {
            addRecorded(new Recorded(RecordedTrimGroup.TAIL, tail), units, rule.marginalUnits());
        }
        for (Extra extra : flight.loading().extras()) {
            if (!rule.groupBy().isBlank()
                    && extra.name().equalsIgnoreCase(rule.groupBy())
                    && isKept(id(rule.groupBy()))) {
                addRecorded(new Recorded(rule.groupBy(), extra.value()), units, rule.marginalUnits());
            }
        }
    }

    private void addRecorded(Recorded key, double units, double marginalUnits) {
        RecordedSums sums = recorded.computeIfAbsent(key, absent -> new RecordedSums());
        sums.units.add(units);
        sums.noseUp += units > marginalUnits ? 1 : 0;
        sums.noseDown += -units > marginalUnits ? 1 : 0;
    }

    /** The figures of one flight by measure. */
    private static Map<Measure, Double> figures(AuditedFlight flight) {
        MeanChord chord = flight.loading().type().geometry().chord();
        Map<Measure, Double> figures = new EnumMap<>(Measure.class);
        Optional<TrimResult> trim = flight.balance().takeoffTrim();
        OptionalDouble units = trim.isPresent() ? trim.get().trimUnits() : OptionalDouble.empty();
        figures.put(Measure.TAKEOFF_CG, cg(flight));
        units.ifPresent(value -> figures.put(Measure.TAKEOFF_TRIM, value));
        putPercent(figures, Measure.ZERO_FUEL_CG, chord, flight.balance().zeroFuel());
        putPercent(figures, Measure.LANDING_CG, chord, flight.balance().landing());
        return figures;
    }

    static double cg(AuditedFlight flight) {
        return flight.loading()
                .type()
                .geometry()
                .chord()
                .percentAt(flight.balance().takeoff().armM());
    }

    private static void putPercent(
            Map<Measure, Double> figures, Measure measure, MeanChord chord, Optional<MassMoment> state) {
        if (state.isPresent()) {
            figures.put(measure, chord.percentAt(state.get().armM()));
        }
    }

    private void addGroups(AuditedFlight flight, Status status) {
        Loading loading = flight.loading();
        FlightIdent ident = loading.flight();
        AircraftType type = loading.type();
        TrimSetting setting = TrimSetting.of(flight);
        String route = ident.route();
        if (!route.isEmpty() && isKept("route")) {
            routes.add(route, status);
        }
        Map<Measure, Double> figures = figures(flight);
        Optional<PartFigures> parts =
                LoadParts.areKnown(flight) ? Optional.of(PartFigures.of(flight, loadParts(type))) : Optional.empty();
        addParts(parts, type, setting, figures);
        One one = new One(figures, parts, setting, status);
        add("type", type.id(), one);
        add("flap setting", setting, one);
        add(TAIL, loading.tail().registration(), one);
        add("route", route, one);
        add("month", YearMonth.from(ident.date()), one);
        add(WEEK, Week.of(ident.date()), one);
        add("take-off mass", Band.ofMass(type, flight.balance().takeoff().massKg()), one);
        add("load factor", Band.ofLoadFactor(type, flight.balance().distribution()), one);
        for (String name : named) {
            add(id(name), value(loading, name), one);
        }
    }

    private record One(Map<Measure, Double> figures, Optional<PartFigures> parts, TrimSetting setting, Status status) {}

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

    private String value(Loading loading, String name) {
        for (Extra extra : loading.extras()) {
            if (extra.name().equalsIgnoreCase(name)) {
                seen.add(name);
                return extra.value();
            }
        }
        return "";
    }

    private boolean isKept(String grouping) {
        return !leftOut.contains(grouping);
    }

    private void add(String grouping, Object group, One one) {
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
            if (measure == Measure.TAKEOFF_CG || !grouping.equals(WEEK)) {
                Place place = measure.byFlaps() ? new Place(grouping, one.setting, group) : inType;
                at(place, measure).add(value, one.status);
            }
        });
        boolean explained =
                grouping.equals(TAIL) || grouping.equals("route") || grouping.equals(WEEK) || grouping.startsWith(BY);
        if (explained && one.parts.isPresent()) {
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

    /** How a column that the user named is told from the groupings that there always are. */
    static String id(String name) {
        return BY + name;
    }

    /** A grouping with more groups than anybody looks at is none. */
    private void leaveOut(String grouping) {
        leftOut.add(grouping);
        groups.remove(grouping);
        values.keySet().removeIf(place -> place.grouping().equals(grouping));
        partsByGroup.keySet().removeIf(place -> place.grouping().equals(grouping));
        recorded.keySet()
                .removeIf(key -> id(key.kind()).equals(grouping)
                        || (grouping.equals(TAIL) && key.kind().equals(RecordedTrimGroup.TAIL)));
        if (grouping.equals("route")) {
            routes.clear();
        }
    }

    /**
     * Takes the flights of another tally, which stays as it is.
     *
     * @param other a tally with the same columns and rules
     */
    public void merge(MergeableTally other) {
        all.merge(other.all);
        types.merge(other.types);
        tails.merge(other.tails);
        routes.merge(other.routes);
        findings.merge(other.findings);
        months.merge(other.months);
        scales.merge(other.scales);
        other.recorded.forEach((key, sums) -> {
            RecordedSums mine = recorded.computeIfAbsent(key, absent -> new RecordedSums());
            mine.units.merge(sums.units);
            mine.noseUp += sums.noseUp;
            mine.noseDown += sums.noseDown;
        });
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
        likelyOutside += other.likelyOutside;
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
        return all.named("").flights();
    }

    /** Flights of a status. */
    public long flights(Status status) {
        StatusCount count = all.named("");
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
        return leftOut.stream()
                .map(grouping -> grouping.startsWith(BY) ? grouping.substring(BY.length()) : grouping)
                .sorted()
                .distinct()
                .toList();
    }

    /** Groups of one kind. */
    Set<Object> groups(String grouping) {
        return groups.getOrDefault(grouping, Set.of());
    }

    Optional<MergeableValues> values(Place place, Measure measure) {
        return Optional.ofNullable(values.getOrDefault(place, Map.of()).get(measure));
    }

    List<String> named() {
        return named.stream().filter(name -> isKept(id(name))).toList();
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
                all.named("all"),
                this.types.counts(type -> type, StatusCount.BY_NAME),
                tails.counts(tail -> tail, StatusCount.WORST_FIRST),
                routes.counts(route -> route, StatusCount.WORST_FIRST),
                findings.counts(),
                scales.groups(figures),
                worst.worstFirst(),
                months.counts(MergeableTally::month, StatusCount.IN_TIME),
                recorded(),
                StatisticsTally.statistics(
                        figures, parts, unusual, new FlightCloud(columns, figures, flight -> places[flight])),
                likelyOutside);
    }

    private PartTallies parts(MergedFigures figures, Map<String, AircraftType> types) {
        PartTallies parts = new PartTallies(figures);
        partsByType.forEach((id, sums) -> parts.put(new LoadParts(types.get(id)), sums));
        partsBySetting.forEach(parts::put);
        partsByGroup.forEach((place, sums) -> parts.put(figures.key(place), sums));
        return parts;
    }

    private List<RecordedTrimGroup> recorded() {
        return recorded.entrySet().stream()
                .map(entry -> new RecordedTrimGroup(
                        entry.getKey().kind(),
                        entry.getKey().name(),
                        entry.getValue().units.n(),
                        entry.getValue().units.mean(),
                        entry.getValue().units.sd(),
                        entry.getValue().noseUp,
                        entry.getValue().noseDown))
                .sorted(RecordedTrimTally.TAILS_THEN_FARTHEST_OFF)
                .toList();
    }
}
