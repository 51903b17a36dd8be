package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * Finds the groups whose take-off CG lies apart from the rest of their type. One group far aft makes all others lie
 * forward of the rest; so those farthest apart are taken out, and the others are tested again without them, until none
 * is left.
 */
final class GroupsApart {

    private record Tested(int type, int group, long flights, MeanDifference difference, double chance) {

        Tested withChance(double adjusted) {
            return new Tested(type, group, flights, difference, adjusted);
        }

        double distance() {
            return Math.abs(difference.difference());
        }

        boolean isApart() {
            return chance < GroupApart.CHANCE && Math.abs(difference.effect()) >= GroupApart.LEAST_EFFECT;
        }
    }

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
        int width = groups.groups();
        Buckets buckets = new Buckets(
                columns,
                Measure.TAKEOFF_CG,
                flight -> columns.types.of(flight) * width + groups.of(flight),
                columns.types.groups() * width);
        BitSet found = new BitSet(columns.types.groups() * width);
        List<GroupApart> apart = new ArrayList<>();
        List<Tested> tested = round(buckets, width, found);
        int families = tested.size();
        for (List<Tested> next = farthest(tested); !next.isEmpty(); next = farthest(tested)) {
            next.forEach(one -> apart.add(named(groups, one, found)));
            next.forEach(one -> found.set(one.type() * width + one.group()));
            tested = round(buckets, width, found);
        }
        apart.sort(Comparator.comparing(GroupApart::typeId, GroupOrder.BY_NAME)
                .thenComparing(group -> -Math.abs(group.effect()))
                .thenComparing(GroupApart::group, GroupOrder.BY_NAME));
        return new ApartResult(groups.grouping(), families, apart);
    }

    /** Tests every group that was not found before against the rest of those. */
    private List<Tested> round(Buckets buckets, int width, BitSet found) {
        List<Tested> tested = new ArrayList<>();
        for (int type : columns.types.inOrder()) {
            test(type, width, buckets, found, tested);
        }
        double[] chances =
                Holm.adjusted(tested.stream().mapToDouble(Tested::chance).toArray());
        List<Tested> adjusted = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            adjusted.add(tested.get(i).withChance(chances[i]));
        }
        return adjusted;
    }

    private void test(int type, int width, Buckets buckets, BitSet found, List<Tested> tested) {
        double[] all = found.isEmpty() ? byType.sorted(type) : left(type, width, buckets, found);
        if (all.length < 2 * GroupApart.FEWEST) {
            return;
        }
        RankTest test = new RankTest(all);
        MeanDifference.Sample whole = sample(all);
        for (int group = 0; group < width; group++) {
            int bucket = type * width + group;
            int n = buckets.n(bucket);
            if (!found.get(bucket) && n >= GroupApart.FEWEST && all.length - n >= GroupApart.FEWEST) {
                double[] values = buckets.sorted(bucket);
                MeanDifference.Sample part = sample(values);
                tested.add(
                        new Tested(type, group, n, MeanDifference.of(part, whole.without(part)), test.chance(values)));
            }
        }
    }

    private static double[] left(int type, int width, Buckets buckets, BitSet found) {
        return IntStream.range(type * width, (type + 1) * width)
                .filter(bucket -> !found.get(bucket))
                .mapToObj(buckets::sorted)
                .flatMapToDouble(Arrays::stream)
                .sorted()
                .toArray();
    }

    /** Those beyond chance that are at least half as far apart as the farthest of their type. */
    private static List<Tested> farthest(List<Tested> tested) {
        Map<Integer, Double> most = new HashMap<>();
        List<Tested> beyond = tested.stream().filter(Tested::isApart).toList();
        beyond.forEach(one -> most.merge(one.type(), one.distance(), Math::max));
        return beyond.stream()
                .filter(one -> one.distance() >= most.get(one.type()) / 2)
                .toList();
    }

    static MeanDifference.Sample sample(double[] values) {
        Moments moments = Moments.of(values, values.length);
        double sd = moments.sd().orElse(0);
        return new MeanDifference.Sample(values.length, moments.mean(), sd * sd * (values.length - 1));
    }

    private GroupApart named(GroupColumn<?> groups, Tested one, BitSet found) {
        int width = groups.groups();
        BitSet before = (BitSet) found.clone();
        int type = one.type();
        MeanDifference difference = one.difference();
        List<PartPull> reasons = tallies.reasons(
                groups.grouping(),
                type,
                group -> group == one.group(),
                group -> group != one.group() && !before.get(type * width + group));
        return new GroupApart(
                groups.grouping(),
                columns.types.key(type),
                groups.label(one.group()),
                one.flights(),
                difference.difference(),
                difference.low(),
                difference.high(),
                difference.effect(),
                one.chance(),
                reasons);
    }
}
