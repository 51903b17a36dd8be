package org.steelyard.analyse.season;

import java.util.List;
import java.util.Optional;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.find.SeasonStatistics;
import org.steelyard.model.finding.FindingCode;

/**
 * What a season comes to.
 *
 * @param all all flights by status
 * @param types by type, in order of name
 * @param tails by tail, the greatest share of breached flights first, those of few flights last ({@link StatusCount})
 * @param routes by from and to, in the same order; flights that give neither are in none
 * @param findings kinds of findings, most serious and most frequent first
 * @param trim trim and CG by type, flap setting and thrust rating of a scale, in order of name
 * @param worst the flights farthest outside by what is exceeded, worst first, at most ten of each kind
 * @param months by month, in order
 * @param recordedTrim recorded against right trim settings by tail, then by the column that the policy names; those
 *     most often off first
 * @param statistics spreads by group, drivers, unusual flights, drift
 * @param likelyOutside flights that are inside on paper but more likely outside than the policy's chance; zero where
 *     the policy looks at no chance
 */
public record SeasonSummary(
        StatusCount all,
        List<StatusCount> types,
        List<StatusCount> tails,
        List<StatusCount> routes,
        List<FindingCount> findings,
        List<TrimGroup> trim,
        List<WorstFlight> worst,
        List<StatusCount> months,
        List<RecordedTrimGroup> recordedTrim,
        SeasonStatistics statistics,
        long likelyOutside) {

    public SeasonSummary {
        types = List.copyOf(types);
        tails = List.copyOf(tails);
        routes = List.copyOf(routes);
        findings = List.copyOf(findings);
        trim = List.copyOf(trim);
        worst = List.copyOf(worst);
        months = List.copyOf(months);
        recordedTrim = List.copyOf(recordedTrim);
    }

    /** What an overview shows of the worst flights: the first two of CG and of mass, the first of each other kind. */
    public List<WorstFlight> worstBriefly() {
        return WorstFlight.briefly(worst);
    }

    /** The tail with the greatest share of flights outside a limit, of those that have not few flights. */
    public Optional<StatusCount> worstTail() {
        return StatusCount.worst(tails);
    }

    /** The route with the greatest share of flights outside a limit, of those that have not few flights. */
    public Optional<StatusCount> worstRoute() {
        return StatusCount.worst(routes);
    }

    /**
     * How many flights have a kind of finding of one severity.
     *
     * @param code the kind
     * @return flights with at least one of them; for a kind of several severities those of the most frequent
     */
    public long flightsWith(FindingCode code) {
        return findings.stream()
                .filter(count -> count.code() == code)
                .mapToLong(FindingCount::flights)
                .max()
                .orElse(0);
    }
}
