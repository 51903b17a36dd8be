package org.steelyard.analyse.find;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.column.TrimSetting;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.Values;

/** Spreads of every measure by every grouping, within a type and, for trim, within a scale. */
final class GroupSpreads {

    private final SeasonFigures figures;

    private GroupSpreads(SeasonFigures figures) {
        this.figures = figures;
    }

    static List<GroupSpread> of(SeasonFigures figures) {
        List<GroupNames<?>> groupings = new ArrayList<>();
        for (GroupKind<?> kind : GroupKind.ALL) {
            if (kind != GroupKind.WEEK) { // of weeks there are charts
                groupings.add(figures.groups(kind));
            }
        }
        groupings.addAll(figures.named());
        GroupSpreads all = new GroupSpreads(figures);
        // measure by measure, as the figures of one are put in order once for all groupings; these side by side, as
        // nothing else is left for the processors to do by then
        Map<Measure, List<List<GroupSpread>>> found = new EnumMap<>(Measure.class);
        for (Measure measure : Measure.values()) {
            found.put(
                    measure,
                    groupings.parallelStream()
                            .map(groups -> all.spreads(groups, measure))
                            .toList());
        }
        List<GroupSpread> spreads = new ArrayList<>();
        for (int i = 0; i < groupings.size(); i++) {
            for (List<List<GroupSpread>> ofMeasure : found.values()) {
                spreads.addAll(ofMeasure.get(i));
            }
        }
        return spreads;
    }

    private List<GroupSpread> spreads(GroupNames<?> groups, Measure measure) {
        if (measure.byFlaps() && groups == figures.types()) {
            return List.of(); // a type's trims under all settings are no spread of anything
        }
        GroupNames<?> within = measure.byFlaps() ? figures.settings() : figures.types();
        int width = groups.groups();
        Grouped buckets = figures.grouped(measure, groups);
        List<GroupSpread> found = new ArrayList<>();
        int[] order = groups.inOrder();
        for (int outer : within.inOrder()) {
            for (int group : order) {
                int bucket = outer * width + group;
                if (buckets.n(bucket) > 0) {
                    found.add(spread(groups, measure, outer, group, buckets, bucket));
                }
            }
        }
        return found;
    }

    private GroupSpread spread(
            GroupNames<?> groups, Measure measure, int outer, int group, Grouped buckets, int bucket) {
        TrimSetting setting = measure.byFlaps()
                ? figures.settings().key(outer)
                : new TrimSetting(figures.types().key(outer), "", "");
        Values values = buckets.values(bucket);
        return new GroupSpread(
                groups.grouping(),
                setting.typeId(),
                setting.flaps(),
                setting.thrust(),
                groups.label(group),
                measure,
                values.spread(),
                values.range(),
                buckets.marginal(bucket),
                buckets.breached(bucket));
    }
}
