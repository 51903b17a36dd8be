package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.List;

/** Spreads of every measure by every grouping, within a type and, for trim, within a flap setting. */
final class GroupSpreads {

    private final FlightColumns columns;
    private final List<GroupSpread> spreads = new ArrayList<>();

    private GroupSpreads(FlightColumns columns) {
        this.columns = columns;
    }

    static List<GroupSpread> of(FlightColumns columns) {
        GroupSpreads all = new GroupSpreads(columns);
        all.add(columns.types);
        all.add(columns.settings);
        all.add(columns.tails);
        all.add(columns.routes);
        all.add(columns.months);
        all.add(columns.massBands);
        all.add(columns.loadFactors);
        columns.named().forEach(all::add);
        return all.spreads;
    }

    private void add(GroupColumn<?> groups) {
        List<List<GroupSpread>> byMeasure = new ArrayList<>();
        for (Measure measure : Measure.values()) {
            if (!measure.byFlaps() || groups != columns.types) {
                byMeasure.add(spreads(groups, measure));
            }
        }
        byMeasure.forEach(spreads::addAll);
    }

    private List<GroupSpread> spreads(GroupColumn<?> groups, Measure measure) {
        GroupColumn<?> within = measure.byFlaps() ? columns.settings : columns.types;
        int width = groups.groups();
        Buckets buckets = new Buckets(
                columns, measure, flight -> within.of(flight) * width + groups.of(flight), within.groups() * width);
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
            GroupColumn<?> groups, Measure measure, int outer, int group, Buckets buckets, int bucket) {
        FlightColumns.Setting setting = measure.byFlaps()
                ? columns.settings.key(outer)
                : new FlightColumns.Setting(columns.types.key(outer), "");
        double[] sorted = buckets.sorted(bucket);
        return new GroupSpread(
                groups.grouping(),
                setting.typeId(),
                setting.flaps(),
                groups.label(group),
                measure,
                Spread.ofSorted(sorted, sorted.length),
                TypicalRange.ofSorted(sorted, sorted.length),
                buckets.marginal(bucket),
                buckets.breached(bucket));
    }
}
