package org.steelyard.analyse.season;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.analyse.column.Exceeded;
import org.steelyard.analyse.figure.Excess;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Finding;

/**
 * A flight far outside a limit of some kind. A flight that exceeds several kinds stands under each.
 *
 * @param flight the flight
 * @param finding its worst breach of that kind
 */
public record WorstFlight(AuditedFlight flight, Finding finding) {

    private static final int BRIEFLY_OF_CG_AND_MASS = 2;

    /** By what is exceeded, CG and mass first; the farthest of each first. */
    static final Comparator<WorstFlight> IN_ORDER =
            Comparator.comparing(WorstFlight::exceeded).thenComparing(WorstFlight::excess, Excess.FARTHEST_FIRST);

    /** What is exceeded. */
    public Exceeded exceeded() {
        return Exceeded.by(finding.code());
    }

    /** By how much. */
    public Excess excess() {
        return Excess.of(finding);
    }

    /** The first of each kind, two of CG and of mass: what an overview shows. */
    static List<WorstFlight> briefly(List<WorstFlight> inOrder) {
        Map<Exceeded, Integer> seen = new EnumMap<>(Exceeded.class);
        return inOrder.stream()
                .filter(worst -> seen.merge(worst.exceeded(), 1, Integer::sum)
                        <= (worst.exceeded().compareTo(Exceeded.MASS) <= 0 ? BRIEFLY_OF_CG_AND_MASS : 1))
                .toList();
    }
}
