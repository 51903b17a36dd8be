package org.steelyard.analyse.season;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.steelyard.analyse.column.Band;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.FlightColumns.Week;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.MergeableValues;
import org.steelyard.analyse.figure.Values;
import org.steelyard.analyse.part.PartTallies;
import org.steelyard.analyse.season.MergeableTally.Place;

/** The figures of a season from the tally of all its parts. */
final class MergedFigures implements SeasonFigures {

    private final MergeableTally tally;
    private final Map<String, GroupNames<?>> names = new LinkedHashMap<>();
    private final Map<GroupNames<?>, String> ids = new HashMap<>();
    private final List<GroupNames<String>> named = new ArrayList<>();
    private final GroupNames<String> types;
    private final GroupNames<TrimSetting> settings;
    private final GroupNames<String> tails;
    private final GroupNames<String> routes;
    private final GroupNames<YearMonth> months;
    private final GroupNames<Week> weeks;
    private final GroupNames<Band> massBands;
    private final GroupNames<Band> loadFactors;

    MergedFigures(MergeableTally tally) {
        this.tally = tally;
        FlightColumns kinds = new FlightColumns(tally.named());
        types = known(kinds.types);
        settings = known(kinds.settings);
        tails = known(kinds.tails);
        routes = known(kinds.routes);
        months = known(kinds.months);
        weeks = known(kinds.weeks);
        massBands = known(kinds.massBands);
        loadFactors = known(kinds.loadFactors);
        kinds.named().forEach(kind -> named.add(known(kind, MergeableTally.id(kind.grouping()))));
    }

    /** The groups of a kind, in an order that does not depend on how they were met. */
    private <K> GroupNames<K> known(GroupNames<K> kind) {
        return known(kind, kind.grouping());
    }

    @SuppressWarnings("unchecked")
    private <K> GroupNames<K> known(GroupNames<K> kind, String id) {
        List<K> keys = new ArrayList<>();
        tally.groups(id).forEach(key -> keys.add((K) key));
        GroupNames<K> asMet = kind.others(keys);
        List<K> inOrder = IntStream.of(asMet.inOrder()).mapToObj(asMet::key).toList();
        GroupNames<K> all = kind.others(inOrder);
        names.put(id, all);
        ids.put(all, id);
        return all;
    }

    /** The sums of a group, by where it stands among the groups of its kind. */
    @SuppressWarnings("unchecked")
    PartTallies.Key key(Place place) {
        GroupNames<Object> groups = (GroupNames<Object>) names.get(place.grouping());
        return new PartTallies.Key(groups.grouping(), types.find((String) place.within()), groups.find(place.group()));
    }

    @Override
    public GroupNames<String> types() {
        return types;
    }

    @Override
    public GroupNames<TrimSetting> settings() {
        return settings;
    }

    @Override
    public GroupNames<String> tails() {
        return tails;
    }

    @Override
    public GroupNames<String> routes() {
        return routes;
    }

    @Override
    public GroupNames<YearMonth> months() {
        return months;
    }

    @Override
    public GroupNames<Week> weeks() {
        return weeks;
    }

    @Override
    public GroupNames<Band> massBands() {
        return massBands;
    }

    @Override
    public GroupNames<Band> loadFactors() {
        return loadFactors;
    }

    @Override
    public List<GroupNames<String>> named() {
        return List.copyOf(named);
    }

    @Override
    public List<String> leftOut() {
        return tally.leftOut();
    }

    @Override
    public List<String> missing() {
        return tally.missing();
    }

    @Override
    public Grouped grouped(Measure measure, GroupNames<?> groups) {
        GroupNames<?> within = measure.byFlaps() ? settings : types;
        int width = groups.groups();
        return new Places(
                measure, place -> new Place(ids.get(groups), within.key(place / width), groups.key(place % width)));
    }

    @Override
    public Grouped bySetting(Measure measure) {
        return new Places(measure, place -> {
            TrimSetting setting = settings.key(place);
            return new Place(settings.grouping(), measure.byFlaps() ? setting : setting.typeId(), setting);
        });
    }

    @Override
    public Grouped byType(Measure measure) {
        return new Places(measure, place -> new Place(types.grouping(), types.key(place), types.key(place)));
    }

    @Override
    public HistogramCells cells(TrimSetting setting, Measure measure, double width) {
        Place place = new Place(settings.grouping(), measure.byFlaps() ? setting : setting.typeId(), setting);
        return HistogramCells.of(
                tally.values(place, measure).map(values -> values.cells(width)).orElseGet(TreeMap::new), width);
    }

    @FunctionalInterface
    private interface Numbered {
        Place at(int place);
    }

    private final class Places implements Grouped {

        private final Measure measure;
        private final Numbered numbered;

        Places(Measure measure, Numbered numbered) {
            this.measure = measure;
            this.numbered = numbered;
        }

        private Optional<MergeableValues> find(int place) {
            return tally.values(numbered.at(place), measure);
        }

        @Override
        public long n(int place) {
            return find(place).map(MergeableValues::n).orElse(0L);
        }

        @Override
        public long marginal(int place) {
            return find(place).map(MergeableValues::marginal).orElse(0L);
        }

        @Override
        public long breached(int place) {
            return find(place).map(MergeableValues::breached).orElse(0L);
        }

        @Override
        public Values values(int place) {
            return find(place).orElseGet(this::none);
        }

        @Override
        public Values together(IntStream places) {
            MergeableValues all = none();
            places.forEach(place -> find(place).ifPresent(all::merge));
            return all;
        }

        private MergeableValues none() {
            return new MergeableValues(measure, tally.maker());
        }
    }
}
