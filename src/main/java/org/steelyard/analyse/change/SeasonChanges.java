package org.steelyard.analyse.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import org.steelyard.analyse.change.SeasonChange.Figure;
import org.steelyard.analyse.change.SeasonChange.Verdict;
import org.steelyard.analyse.change.SeasonSide.GroupKey;
import org.steelyard.analyse.change.SeasonSide.Kind;
import org.steelyard.analyse.change.SeasonSide.Sums;
import org.steelyard.analyse.column.GroupOrder;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Holm;
import org.steelyard.analyse.figure.MeanDifference;
import org.steelyard.analyse.figure.ShareDifference;
import org.steelyard.analyse.find.GroupApart;
import org.steelyard.check.text.FindingText;

/** Compares two seasons. */
public final class SeasonChanges {

    private static final String KINDS = "kind of finding";

    /** Those beyond chance first, the least likely first; the others by their place. */
    private static final Comparator<SeasonChange> NEWS_FIRST = Comparator.comparing(
                    (SeasonChange change) -> !change.verdict().beyondChance())
            .thenComparing(change -> change.chance().orElse(2))
            .thenComparing(change -> -Math.abs(change.effect().orElse(0)))
            .thenComparing(SeasonChange::figure)
            .thenComparing(SeasonChange::grouping)
            .thenComparing(SeasonChange::typeId, GroupOrder.BY_NAME)
            .thenComparing(SeasonChange::flaps, GroupOrder.BY_NAME)
            .thenComparing(SeasonChange::thrust, GroupOrder.BY_NAME)
            .thenComparing(SeasonChange::group, GroupOrder.BY_NAME);

    private record Row(
            Figure figure,
            GroupKey key,
            long before,
            long after,
            OptionalDouble was,
            OptionalDouble is,
            Optional<Test> test) {}

    /** What never or always happened in both seasons cannot differ, and its chance is 1. */
    private record Test(double low, double high, double effect, double chance, boolean canDiffer) {}

    private final SeasonSide before;
    private final SeasonSide after;
    private final List<Row> rows = new ArrayList<>();

    private SeasonChanges(SeasonSide before, SeasonSide after) {
        this.before = before;
        this.after = after;
    }

    /**
     * Compares two seasons.
     *
     * @param before the first
     * @param after the second
     * @return every figure of every group, those that moved beyond chance first
     */
    public static List<SeasonChange> between(SeasonSide before, SeasonSide after) {
        SeasonChanges changes = new SeasonChanges(before, after);
        changes.means(Figure.TAKEOFF_CG, before.cg(), after.cg());
        changes.means(Figure.TAKEOFF_TRIM, before.trim(), after.trim());
        changes.statuses();
        changes.kinds();
        return changes.judged();
    }

    private static <K> Set<K> all(Set<K> one, Set<K> other) {
        Set<K> all = new HashSet<>(one);
        all.addAll(other);
        return all;
    }

    private void means(Figure figure, Map<GroupKey, Sums> was, Map<GroupKey, Sums> is) {
        for (GroupKey key : all(was.keySet(), is.keySet())) {
            MeanDifference.Sample first = was.getOrDefault(key, new Sums()).sample();
            MeanDifference.Sample second = is.getOrDefault(key, new Sums()).sample();
            Optional<Test> test = Optional.empty();
            if (enough(first.n(), second.n())) {
                MeanDifference moved = MeanDifference.of(second, first);
                test = Optional.of(new Test(moved.low(), moved.high(), moved.effect(), moved.chance(), true));
            }
            rows.add(new Row(figure, key, first.n(), second.n(), mean(first), mean(second), test));
        }
    }

    private static OptionalDouble mean(MeanDifference.Sample sample) {
        return sample.n() == 0 ? OptionalDouble.empty() : OptionalDouble.of(sample.mean());
    }

    private static boolean enough(long before, long after) {
        return before >= GroupApart.FEWEST && after >= GroupApart.FEWEST;
    }

    private void statuses() {
        for (GroupKey key : all(before.keys(), after.keys())) {
            StatusCount was = before.count(key);
            StatusCount is = after.count(key);
            share(Figure.BREACHED, key, was.breached(), was.flights(), is.breached(), is.flights());
            share(Figure.MARGINAL, key, was.marginal(), was.flights(), is.marginal(), is.flights());
        }
    }

    private void kinds() {
        for (String type : all(before.kinds().keySet(), after.kinds().keySet())) {
            Map<Kind, Long> was = before.kinds().getOrDefault(type, Map.of());
            Map<Kind, Long> is = after.kinds().getOrDefault(type, Map.of());
            GroupKey whole = new GroupKey(SeasonSide.TYPE, type, type);
            for (Kind kind : all(was.keySet(), is.keySet())) {
                share(
                        Figure.FINDING,
                        new GroupKey(KINDS, type, FindingText.kind(kind.code(), kind.severity())),
                        was.getOrDefault(kind, 0L),
                        before.count(whole).flights(),
                        is.getOrDefault(kind, 0L),
                        after.count(whole).flights());
            }
        }
    }

    private void share(Figure figure, GroupKey key, long someWas, long was, long someIs, long is) {
        Optional<Test> test = Optional.empty();
        if (enough(was, is)) {
            ShareDifference moved = ShareDifference.of(someIs, is, someWas, was);
            long some = someWas + someIs;
            boolean canDiffer = some > 0 && some < was + is;
            test = Optional.of(
                    new Test(100 * moved.low(), 100 * moved.high(), moved.effect(), moved.chance(), canDiffer));
        }
        rows.add(new Row(figure, key, was, is, percent(someWas, was), percent(someIs, is), test));
    }

    private static OptionalDouble percent(long some, long all) {
        return all == 0 ? OptionalDouble.empty() : OptionalDouble.of(100.0 * some / all);
    }

    private List<SeasonChange> judged() {
        Map<Row, Double> chances = chances();
        return rows.stream()
                .map(row -> change(row, chances.get(row)))
                .sorted(NEWS_FIRST)
                .toList();
    }

    /** Adjusted over all tests together; a figure by a grouping weighs the same however many groups it has. */
    private Map<Row, Double> chances() {
        List<Row> tested = rows.stream()
                .filter(row -> row.test().filter(Test::canDiffer).isPresent())
                .toList();
        Map<List<Object>, Long> groups =
                tested.stream().collect(Collectors.groupingBy(SeasonChanges::family, Collectors.counting()));
        double[] adjusted = Holm.adjusted(
                tested.stream()
                        .mapToDouble(row -> row.test().orElseThrow().chance())
                        .toArray(),
                tested.stream()
                        .mapToDouble(row -> 1.0 / groups.get(family(row)))
                        .toArray());
        Map<Row, Double> chances = new HashMap<>();
        rows.forEach(row -> row.test().ifPresent(test -> chances.put(row, test.chance())));
        for (int i = 0; i < adjusted.length; i++) {
            chances.put(tested.get(i), adjusted[i]);
        }
        return chances;
    }

    private static List<Object> family(Row row) {
        return List.of(row.figure(), row.key().grouping());
    }

    private SeasonChange change(Row row, Double chance) {
        Optional<Test> test = row.test();
        return new SeasonChange(
                row.figure(),
                row.key().grouping(),
                row.key().typeId(),
                row.key().flaps(),
                row.key().thrust(),
                row.key().group(),
                row.before(),
                row.after(),
                row.was(),
                row.is(),
                number(test.map(Test::low)),
                number(test.map(Test::high)),
                number(test.map(Test::effect)),
                number(Optional.ofNullable(chance)),
                verdict(row, chance));
    }

    private static OptionalDouble number(Optional<Double> value) {
        return value.isPresent() ? OptionalDouble.of(value.get()) : OptionalDouble.empty();
    }

    private Verdict verdict(Row row, Double chance) {
        if (row.before() == 0) {
            return Verdict.ONLY_AFTER;
        }
        if (row.after() == 0) {
            return Verdict.ONLY_BEFORE;
        }
        if (chance == null) {
            return Verdict.FEW;
        }
        if (chance >= GroupApart.CHANCE) {
            return Verdict.WITHIN_CHANCE;
        }
        boolean up = row.is().getAsDouble() > row.was().getAsDouble();
        if (!row.figure().isShare()) {
            return up ? Verdict.UP : Verdict.DOWN;
        }
        return share(row, up);
    }

    /** A group is an offender where a greater share of its flights is breached than of its type. */
    private Verdict share(Row row, boolean up) {
        GroupKey whole =
                new GroupKey(SeasonSide.TYPE, row.key().typeId(), row.key().typeId());
        boolean ofGroup =
                row.figure() == Figure.BREACHED && !row.key().grouping().equals(SeasonSide.TYPE);
        boolean offended = row.was().getAsDouble() > percentBreached(before.count(whole));
        boolean offends = row.is().getAsDouble() > percentBreached(after.count(whole));
        if (up) {
            return ofGroup && offends && !offended ? Verdict.NEW_OFFENDER : Verdict.WORSE;
        }
        return ofGroup && offended && !offends ? Verdict.CURED : Verdict.BETTER;
    }

    private static double percentBreached(StatusCount count) {
        return 100.0 * count.breached() / count.flights();
    }
}
