package org.steelyard.grade.mark;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.steelyard.grade.working.SlipKind;
import org.steelyard.model.input.SheetItem;

/**
 * A class at a glance.
 *
 * @param sheets how many sheets were marked
 * @param passed how many passed
 * @param meanPercent mean share of the points in %; 0 without sheets
 * @param medianPercent median share of the points in %: the middle one, or the mean of the middle two; 0 without sheets
 * @param bands sheets by tenths of the points: from 0 to less than 10 %, and so on; full marks belong to the last
 * @param items items, the hardest first
 * @param slips causes, the commonest first
 * @param untold sheets with wrong figures whose cause cannot be told
 * @param repeated one sheet of each exercise that a student handed in more than once
 */
public record ClassSummary(
        int sheets,
        int passed,
        double meanPercent,
        double medianPercent,
        List<Integer> bands,
        List<ItemCount> items,
        List<SlipCount> slips,
        int untold,
        List<MarkedSheet> repeated) {

    private static final int BANDS = 10;
    private static final int MOST_TOLD = 5;

    /**
     * How an item fared.
     *
     * @param item which
     * @param outcomes how many sheets by outcome
     * @param percent share of its points that was given, in %
     */
    public record ItemCount(SheetItem item, Map<Outcome, Integer> outcomes, double percent) {

        public ItemCount {
            outcomes = Map.copyOf(outcomes);
        }

        /**
         * Sheets with an outcome.
         *
         * @param outcome which
         * @return how many
         */
        public int count(Outcome outcome) {
            return outcomes.getOrDefault(outcome, 0);
        }

        /**
         * All sheets that were asked.
         *
         * @return how many
         */
        public int asked() {
            return outcomes.values().stream().mapToInt(Integer::intValue).sum();
        }
    }

    /**
     * A cause.
     *
     * @param kind which slip
     * @param certain sheets on which it is the one cause that explains the figures, alone or in a pair
     * @param possible sheets on which it is one of several that cannot be told apart
     * @param student a student with it
     * @param example what that student was told
     */
    public record SlipCount(SlipKind kind, int certain, int possible, String student, String example) {}

    public ClassSummary {
        bands = List.copyOf(bands);
        items = List.copyOf(items);
        slips = List.copyOf(slips);
        repeated = List.copyOf(repeated);
    }

    /**
     * Sums up a class.
     *
     * @param marked its sheets
     * @return the summary
     */
    public static ClassSummary of(List<MarkedSheet> marked) {
        List<Double> percents =
                marked.stream().map(MarkedSheet::percent).sorted().toList();
        int[] bands = new int[BANDS];
        percents.forEach(percent -> bands[Math.min(BANDS - 1, (int) (percent / BANDS))]++);
        return new ClassSummary(
                marked.size(),
                (int) marked.stream().filter(MarkedSheet::passed).count(),
                percents.stream().mapToDouble(Double::doubleValue).average().orElse(0),
                median(percents),
                java.util.Arrays.stream(bands).boxed().toList(),
                items(marked),
                slips(marked),
                (int) marked.stream()
                        .filter(sheet -> sheet.diagnosis() instanceof Diagnosis.CannotTell)
                        .count(),
                marked.stream().filter(sheet -> sheet.handedIn().isRepeated()).toList());
    }

    /**
     * That exercises were handed in more than once.
     *
     * @return by whom, which, how often and what then stands, without a full stop; empty where there are none
     */
    public Optional<String> handedInTwice() {
        Map<String, String> words = new LinkedHashMap<>();
        for (MarkedSheet sheet : repeated) {
            String one = sheet.sheet().student().strip() + ", "
                    + sheet.exercise().loading().flight().flight() + " "
                    + HandedIn.times(sheet.handedIn().times());
            words.putIfAbsent(one.toLowerCase(Locale.ROOT), one);
        }
        List<String> told = words.values().stream().limit(MOST_TOLD).toList();
        String more = words.size() > MOST_TOLD ? "; and " + (words.size() - MOST_TOLD) + " more" : "";
        return repeated.stream()
                .findFirst()
                .map(sheet -> "Handed in more than once: " + String.join("; ", told) + more + "; "
                        + (sheet.handedIn().gaveWay().isEmpty() ? "" : "the ")
                        + sheet.handedIn().rule().label());
    }

    private static double median(List<Double> sorted) {
        int n = sorted.size();
        return n == 0 ? 0 : (sorted.get((n - 1) / 2) + sorted.get(n / 2)) / 2;
    }

    private static List<ItemCount> items(List<MarkedSheet> marked) {
        List<ItemCount> counts = new ArrayList<>();
        for (SheetItem item : SheetItem.ALL) {
            Map<Outcome, Integer> outcomes = new EnumMap<>(Outcome.class);
            double points = 0;
            double outOf = 0;
            for (MarkedSheet sheet : marked) {
                for (MarkedItem one : sheet.items()) {
                    if (one.item() == item) {
                        outcomes.merge(one.outcome(), 1, Integer::sum);
                        points += one.points();
                        outOf += one.outOf();
                    }
                }
            }
            if (outOf > 0) {
                counts.add(new ItemCount(item, outcomes, 100 * points / outOf));
            }
        }
        counts.sort(Comparator.comparingDouble(ItemCount::percent).thenComparing(ItemCount::item));
        return counts;
    }

    private static List<SlipCount> slips(List<MarkedSheet> marked) {
        Map<SlipKind, SlipCount> counts = new EnumMap<>(SlipKind.class);
        for (MarkedSheet sheet : marked) {
            if (sheet.diagnosis() instanceof Diagnosis.Found found) {
                Map<SlipKind, String> here = new EnumMap<>(SlipKind.class);
                for (Explanation explanation : found.explanations()) {
                    for (int i = 0; i < explanation.slips().size(); i++) {
                        here.putIfAbsent(
                                explanation.slips().get(i).kind(),
                                explanation.sentences().get(i));
                    }
                }
                boolean certain = found.certain().isPresent();
                here.forEach((kind, sentence) ->
                        counts.merge(kind, one(kind, certain, sheet, sentence), ClassSummary::added));
            }
        }
        return counts.values().stream()
                .sorted(Comparator.comparingInt(SlipCount::certain)
                        .thenComparingInt(SlipCount::possible)
                        .reversed()
                        .thenComparing(SlipCount::kind))
                .toList();
    }

    private static SlipCount one(SlipKind kind, boolean certain, MarkedSheet sheet, String sentence) {
        return new SlipCount(
                kind, certain ? 1 : 0, certain ? 0 : 1, sheet.sheet().student(), sentence);
    }

    private static SlipCount added(SlipCount one, SlipCount other) {
        boolean keep = one.certain() > 0 || other.certain() == 0;
        return new SlipCount(
                one.kind(),
                one.certain() + other.certain(),
                one.possible() + other.possible(),
                keep ? one.student() : other.student(),
                keep ? one.example() : other.example());
    }

    /**
     * The hardest item.
     *
     * @return the one with the least share of its points
     */
    public Optional<ItemCount> hardest() {
        return items.stream().findFirst();
    }
}
