package org.steelyard.analyse.season;

import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import org.steelyard.analyse.column.Exceeded;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.Severity;

/** Keeps the flights farthest outside the limits of each kind; of two equally far, the one that came first. */
public final class WorstFlights {

    private record Ranked(WorstFlight worst, long order) {}

    private static final Comparator<Ranked> WORST_FIRST =
            Comparator.comparing(Ranked::worst, WorstFlight.IN_ORDER).thenComparingLong(Ranked::order);

    private final Map<Exceeded, PriorityQueue<Ranked>> kept = new EnumMap<>(Exceeded.class);
    private final int mostOfAKind;
    private long order;

    public WorstFlights(int mostOfAKind) {
        this.mostOfAKind = mostOfAKind;
    }

    public void add(AuditedFlight flight) {
        for (WorstFlight worst : byKind(flight)) {
            PriorityQueue<Ranked> ofKind =
                    kept.computeIfAbsent(worst.exceeded(), kind -> new PriorityQueue<>(WORST_FIRST.reversed()));
            ofKind.add(new Ranked(worst, order));
            if (ofKind.size() > mostOfAKind) {
                ofKind.poll();
            }
        }
        order++;
    }

    /** The worst breach of each kind that a flight has; of two equally far, the first. */
    public static Collection<WorstFlight> byKind(AuditedFlight flight) {
        Map<Exceeded, WorstFlight> worst = new EnumMap<>(Exceeded.class);
        for (Finding finding : flight.assessment().findings()) {
            if (finding.severity() == Severity.BREACH) {
                worst.merge(
                        Exceeded.by(finding.code()),
                        new WorstFlight(flight, finding),
                        (before, now) -> WorstFlight.IN_ORDER.compare(now, before) < 0 ? now : before);
            }
        }
        return worst.values();
    }

    public List<WorstFlight> worstFirst() {
        return kept.values().stream()
                .flatMap(Collection::stream)
                .sorted(WORST_FIRST)
                .map(Ranked::worst)
                .toList();
    }
}
