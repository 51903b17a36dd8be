package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Finds the groups whose take-off CG lies apart from the rest of their type. */
final class GroupsApart {

    private record Tested(int type, int group, long flights, MeanDifference difference, double chance) {}

    private final FlightColumns columns;
    private final PartTallies tallies;
    private final Buckets byType;

    GroupsApart(FlightColumns columns, PartTallies tallies) {
        this.columns = columns;
        this.tallies = tallies;
        byType = new Buckets(columns, Measure.TAKEOFF_CG, columns.types::of, columns.types.groups());
    }

    /** Those of one kind, and how many were tested. */
    ApartResult of(GroupColumn<?> groups) {
        List<Tested> tested = new ArrayList<>();
        int width = groups.groups();
        Buckets buckets = new Buckets(
                columns,
                Measure.TAKEOFF_CG,
                flight -> columns.types.of(flight) * width + groups.of(flight),
                columns.types.groups() * width);
        for (int type : columns.types.inOrder()) {
            test(type, width, buckets, tested);
        }
        return new ApartResult(groups.grouping(), tested.size(), apart(groups, tested));
    }

    private void test(int type, int width, Buckets buckets, List<Tested> tested) {
        double[] all = byType.sorted(type);
        if (all.length < 2 * GroupApart.FEWEST) {
            return;
        }
        RankTest test = new RankTest(all);
        MeanDifference.Sample whole = sample(all);
        for (int group = 0; group < width; group++) {
            int n = buckets.n(type * width + group);
            if (n >= GroupApart.FEWEST && all.length - n >= GroupApart.FEWEST) {
                double[] values = buckets.sorted(type * width + group);
                MeanDifference.Sample part = sample(values);
                tested.add(new Tested(
                        type, group, n, MeanDifference.of(part, whole.without(part)), test.chance(values)));
            }
        }
    }

    static MeanDifference.Sample sample(double[] values) {
        Moments moments = Moments.of(values, values.length);
        double sd = moments.sd().orElse(0);
        return new MeanDifference.Sample(values.length, moments.mean(), sd * sd * (values.length - 1));
    }

    private List<GroupApart> apart(GroupColumn<?> groups, List<Tested> tested) {
        double[] chances = Holm.adjusted(tested.stream().mapToDouble(Tested::chance).toArray());
        List<GroupApart> apart = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            Tested one = tested.get(i);
            if (chances[i] < GroupApart.CHANCE && Math.abs(one.difference().effect()) >= GroupApart.LEAST_EFFECT) {
                apart.add(named(groups, one, chances[i]));
            }
        }
        apart.sort(Comparator.comparing(GroupApart::typeId, GroupOrder.BY_NAME)
                .thenComparing(group -> -Math.abs(group.effect()))
                .thenComparing(GroupApart::group, GroupOrder.BY_NAME));
        return apart;
    }

    private GroupApart named(GroupColumn<?> groups, Tested one, double chance) {
        int type = one.type();
        MeanDifference difference = one.difference();
        List<PartPull> reasons =
                tallies.reasons(groups.grouping(), type, group -> group == one.group(), group -> group != one.group());
        return new GroupApart(
                groups.grouping(),
                columns.types.key(type),
                groups.label(one.group()),
                one.flights(),
                difference.difference(),
                difference.low(),
                difference.high(),
                difference.effect(),
                chance,
                reasons);
    }
}
