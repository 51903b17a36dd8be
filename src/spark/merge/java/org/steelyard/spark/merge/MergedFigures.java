package org.steelyard.spark.merge;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.HistogramCells;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Values;
import org.steelyard.analyse.part.PartTallies;
import org.steelyard.spark.merge.MergeableTally.Place;

/** The figures of a season from the tally of all its parts. */
final class MergedFigures implements SeasonFigures {

    private final MergeableTally tally;
    private final Map<String, GroupNames<?>> names = new LinkedHashMap<>();

    MergedFigures(MergeableTally tally) {
        this.tally = tally;
        GroupKind.ALL.forEach(this::know);
        tally.named().forEach(name -> know(GroupKind.named(name)));
    }

    /** The groups of a kind, in an order that does not depend on how they were met. */
    @SuppressWarnings("unchecked")
    private <K> void know(GroupKind<K> kind) {
        List<K> keys = new ArrayList<>();
        tally.groups(kind.id()).forEach(key -> keys.add((K) key));
        GroupNames<K> asMet = new GroupNames<>(kind).others(keys);
        names.put(
                kind.id(),
                asMet.others(IntStream.of(asMet.inOrder()).mapToObj(asMet::key).toList()));
    }

    /** The sums of a group, by where it stands among the groups of its kind. */
    @SuppressWarnings("unchecked")
    PartTallies.Key key(Place place) {
        GroupNames<Object> groups = (GroupNames<Object>) names.get(place.grouping());
        return new PartTallies.Key(
                groups.grouping(), types().find((String) place.within()), groups.find(place.group()));
    }

    @Override
    @SuppressWarnings("unchecked")
    public <K> GroupNames<K> groups(GroupKind<K> kind) {
        return (GroupNames<K>) names.get(kind.id());
    }

    @Override
    public List<GroupNames<String>> named() {
        return tally.named().stream().map(name -> groups(GroupKind.named(name))).toList();
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
        GroupNames<?> within = measure.byFlaps() ? settings() : types();
        int width = groups.groups();
        return new Places(
                measure, place -> new Place(groups.kind().id(), within.key(place / width), groups.key(place % width)));
    }

    @Override
    public Grouped bySetting(Measure measure) {
        return new Places(measure, place -> {
            TrimSetting setting = settings().key(place);
            return new Place(GroupKind.SETTING.id(), measure.byFlaps() ? setting : setting.typeId(), setting);
        });
    }

    @Override
    public Grouped byType(Measure measure) {
        return new Places(measure, place -> new Place(GroupKind.TYPE.id(), types().key(place), types().key(place)));
    }

    @Override
    public HistogramCells cells(TrimSetting setting, Measure measure, double width) {
        Place place = new Place(GroupKind.SETTING.id(), measure.byFlaps() ? setting : setting.typeId(), setting);
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
