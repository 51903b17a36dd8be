package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.List;

/** Spreads of every measure by every grouping, within a type and, for trim, within a flap setting. */
final class GroupSpreads {

    private final SeasonFigures figures;
    private final List<GroupSpread> spreads = new ArrayList<>();

    private GroupSpreads(SeasonFigures figures) {
        this.figures = figures;
    }

    static List<GroupSpread> of(SeasonFigures figures) {
        GroupSpreads all = new GroupSpreads(figures);
        all.add(figures.types());
        all.add(figures.settings());
        all.add(figures.tails());
        all.add(figures.routes());
        all.add(figures.months());
        all.add(figures.massBands());
        all.add(figures.loadFactors());
        figures.named().forEach(all::add);
        return all.spreads;
    }

    private void add(GroupNames<?> groups) {
        List<List<GroupSpread>> byMeasure = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (!measure.byFlaps() || groups != figures.types()) {
                byMeasure.add(spreads(groups, measure));
            }
        }
        byMeasure.forEach(spreads::addAll);
    }

    private List<GroupSpread> spreads(GroupNames<?> groups, Measure measure) {
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
        FlightColumns.Setting setting = measure.byFlaps()
                ? figures.settings().key(outer)
                : new FlightColumns.Setting(figures.types().key(outer), "");
        Values values = buckets.values(bucket);
        return new GroupSpread(
                groups.grouping(),
                setting.typeId(),
                setting.flaps(),
                groups.label(group),
                measure,
                values.spread(),
                values.range(),
                buckets.marginal(bucket),
                buckets.breached(bucket));
    }
}
