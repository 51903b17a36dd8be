package org.steelyard.analyse.find;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.column.GroupOrder;
import org.steelyard.analyse.column.Grouped;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.figure.Holm;
import org.steelyard.analyse.figure.MeanDifference;
import org.steelyard.analyse.figure.Measure;
import org.steelyard.analyse.figure.RankTest;
import org.steelyard.analyse.figure.Ranks;
import org.steelyard.analyse.figure.Values;
import org.steelyard.analyse.part.PartPull;
import org.steelyard.analyse.part.PartTallies;

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

    private final SeasonFigures figures;
    private final PartTallies tallies;
    private final Grouped byType;
    private final List<GroupNames<?>> kinds = new ArrayList<>();

    GroupsApart(SeasonFigures figures, PartTallies tallies) {
        this.figures = figures;
        this.tallies = tallies;
        kinds.add(figures.groups(GroupKind.TAIL));
        kinds.add(figures.groups(GroupKind.ROUTE));
        kinds.addAll(figures.named());
        kinds.removeIf(figures::isLeftOut);
        byType = figures.byType(Measure.TAKEOFF_CG);
    }

    /** Those of each kind. */
    List<ApartResult> all() {
        return kinds.stream().map(this::of).toList();
    }

    /** Kinds of which there is more than one group share what may be wrong. */
    private long kindsTested() {
        return kinds.stream().filter(groups -> groups.groups() > 1).count();
    }

    /** Those of one kind, and how many were tested. */
    private ApartResult of(GroupNames<?> groups) {
        int width = groups.groups();
        Grouped buckets = figures.grouped(Measure.TAKEOFF_CG, groups);
        BitSet found = new BitSet(figures.types().groups() * width);
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
    private List<Tested> round(Grouped buckets, int width, BitSet found) {
        List<Tested> tested = new ArrayList<>();
        for (int type : figures.types().inOrder()) {
            test(type, width, buckets, found, tested);
        }
        double[] chances =
                Holm.adjusted(tested.stream().mapToDouble(Tested::chance).toArray());
        List<Tested> adjusted = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            adjusted.add(tested.get(i).withChance(Math.min(1, kindsTested() * chances[i])));
        }
        return adjusted;
    }

    private void test(int type, int width, Grouped buckets, BitSet found, List<Tested> tested) {
        Values all = found.isEmpty() ? byType.values(type) : left(type, width, buckets, found);
        if (all.n() < 2 * GroupApart.FEWEST) {
            return;
        }
        Ranks ranks = all.ranks(false);
        RankTest test = new RankTest(ranks);
        MeanDifference.Sample whole = all.sample();
        for (int group = 0; group < width; group++) {
            int bucket = type * width + group;
            long n = buckets.n(bucket);
            if (!found.get(bucket) && n >= GroupApart.FEWEST && all.n() - n >= GroupApart.FEWEST) {
                Values values = buckets.values(bucket);
                MeanDifference.Sample part = values.sample();
                MeanDifference difference = MeanDifference.of(part, whole.without(part));
                tested.add(new Tested(type, group, n, difference, test.chance(values.ranks(ranks.inCells()))));
            }
        }
    }

    private static Values left(int type, int width, Grouped buckets, BitSet found) {
        return buckets.together(
                IntStream.range(type * width, (type + 1) * width).filter(bucket -> !found.get(bucket)));
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

    private GroupApart named(GroupNames<?> groups, Tested one, BitSet found) {
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
                figures.types().key(type),
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
