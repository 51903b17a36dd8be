package org.steelyard.analyse.season;

import java.io.Serializable;
import org.steelyard.analyse.column.StatusTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.policy.ChanceRule;
import org.steelyard.model.policy.Policy;

/** What is counted of the flights of a season, whether it is tallied as a whole or in parts that are merged. */
public final class SeasonCounts implements Serializable {

    private static final long serialVersionUID = 1;

    private final StatusTally.Counts all = new StatusTally.Counts();
    private final FindingTally findings = new FindingTally();
    private final TrimTally trim = new TrimTally();
    private final RecordedTrimTally recordedTrim;
    private final boolean chancesCount;
    private final double likelyPercent;
    private long likelyOutside;

    public SeasonCounts(Policy policy) {
        recordedTrim = new RecordedTrimTally(policy);
        chancesCount = policy.chance().isPresent();
        likelyPercent = policy.chance().map(ChanceRule::percent).orElse(0.0);
    }

    public void add(AuditedFlight flight, Status status) {
        all.add(status);
        findings.add(flight.assessment().findings());
        trim.add(flight);
        recordedTrim.add(flight);
        likelyOutside += isLikelyOutside(flight) ? 1 : 0;
    }

    private boolean isLikelyOutside(AuditedFlight flight) {
        return chancesCount
                && flight.assessment()
                        .uncertainty()
                        .filter(sure -> sure.isInsideButLikelyOutside(likelyPercent))
                        .isPresent();
    }

    public void merge(SeasonCounts other) {
        all.merge(other.all);
        findings.merge(other.findings);
        trim.merge(other.trim);
        recordedTrim.merge(other.recordedTrim);
        likelyOutside += other.likelyOutside;
    }

    public StatusTally.Counts all() {
        return all;
    }

    public FindingTally findings() {
        return findings;
    }

    public TrimTally trim() {
        return trim;
    }

    public RecordedTrimTally recordedTrim() {
        return recordedTrim;
    }

    public long likelyOutside() {
        return likelyOutside;
    }
}
