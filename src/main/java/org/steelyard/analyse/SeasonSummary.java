package org.steelyard.analyse;

import java.util.List;

/**
 * What a season comes to.
 *
 * @param all all flights by status
 * @param types by type, in order of name
 * @param tails by tail, most breached first, then most marginal, then by name
 * @param routes by from and to, in the same order
 * @param findings kinds of findings, most serious and most frequent first
 * @param trim trim and CG by type and flap setting, in order of name
 * @param worst the flights farthest outside, worst first, at most twenty
 */
public record SeasonSummary(
        StatusCount all,
        List<StatusCount> types,
        List<StatusCount> tails,
        List<StatusCount> routes,
        List<FindingCount> findings,
        List<TrimGroup> trim,
        List<WorstFlight> worst) {

    /** Copies the lists. */
    public SeasonSummary {
        types = List.copyOf(types);
        tails = List.copyOf(tails);
        routes = List.copyOf(routes);
        findings = List.copyOf(findings);
        trim = List.copyOf(trim);
        worst = List.copyOf(worst);
    }
}
