package org.steelyard.analyse;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import org.steelyard.check.AuditedFlight;
import org.steelyard.model.Finding;
import org.steelyard.model.Policy;
import org.steelyard.model.Severity;

/** Keeps the flights farthest outside a limit; of two equally far, the one that came first. */
final class WorstFlights {

    private record Ranked(WorstFlight worst, long order) {}

    private static final Comparator<Ranked> MILDEST_FIRST = Comparator.<Ranked>comparingDouble(
                    ranked -> ranked.worst().excess())
            .thenComparing(Comparator.comparingLong(Ranked::order).reversed());

    private final PriorityQueue<Ranked> kept = new PriorityQueue<>(MILDEST_FIRST);
    private final Policy policy;
    private final int most;
    private long order;

    WorstFlights(Policy policy, int most) {
        this.policy = policy;
        this.most = most;
    }

    void add(AuditedFlight flight) {
        Optional<WorstFlight> worst = worst(flight, policy);
        if (worst.isPresent()) {
            keep(new Ranked(worst.get(), order++));
        }
    }

    private static Optional<WorstFlight> worst(AuditedFlight flight, Policy policy) {
        Finding worst = null;
        double excess = -1;
        for (Finding finding : flight.assessment().findings()) {
            if (finding.severity() == Severity.BREACH && Excess.of(finding, policy) > excess) {
                worst = finding;
                excess = Excess.of(finding, policy);
            }
        }
        return worst == null ? Optional.empty() : Optional.of(new WorstFlight(flight, worst, excess));
    }

    /** How far outside a breached flight is by its worst breach. */
    static double excess(AuditedFlight flight, Policy policy) {
        return worst(flight, policy).map(WorstFlight::excess).orElse(0.0);
    }

    private void keep(Ranked ranked) {
        kept.add(ranked);
        if (kept.size() > most) {
            kept.poll();
        }
    }

    List<WorstFlight> worstFirst() {
        return kept.stream().sorted(MILDEST_FIRST.reversed()).map(Ranked::worst).toList();
    }
}
