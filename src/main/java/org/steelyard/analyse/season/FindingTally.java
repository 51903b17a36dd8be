package org.steelyard.analyse.season;

import java.io.Serializable;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Severity;

/** Counts findings by kind and severity, and the flights that have them. */
public final class FindingTally implements Serializable {

    private static final long serialVersionUID = 1;

    private static final Comparator<FindingCount> WORST_FIRST = Comparator.comparing(FindingCount::severity)
            .thenComparingLong(FindingCount::flights)
            .thenComparingLong(FindingCount::findings)
            .reversed()
            .thenComparing(FindingCount::code);

    private final Map<Severity, Map<FindingCode, Kind>> kinds = new EnumMap<>(Severity.class);
    private long flight;

    void add(List<Finding> ofOneFlight) {
        flight++;
        for (Finding finding : ofOneFlight) {
            kinds.computeIfAbsent(finding.severity(), severity -> new EnumMap<>(FindingCode.class))
                    .computeIfAbsent(finding.code(), code -> new Kind())
                    .add(flight);
        }
    }

    /** Adds the counts of other flights. */
    void merge(FindingTally other) {
        other.kinds.forEach((severity, codes) -> codes.forEach(
                (code, kind) -> kinds.computeIfAbsent(severity, absent -> new EnumMap<>(FindingCode.class))
                        .computeIfAbsent(code, absent -> new Kind())
                        .merge(kind)));
    }

    public List<FindingCount> counts() {
        List<FindingCount> counts = new ArrayList<>();
        kinds.forEach((severity, codes) -> codes.forEach(
                (code, kind) -> counts.add(new FindingCount(code, severity, kind.findings, kind.flights))));
        counts.sort(WORST_FIRST);
        return counts;
    }

    private static final class Kind implements Serializable {

        private static final long serialVersionUID = 1;

        private long findings;
        private long flights;
        private long lastFlight;

        void merge(Kind other) {
            findings += other.findings;
            flights += other.flights;
        }

        void add(long flight) {
            findings++;
            if (lastFlight != flight) {
                lastFlight = flight;
                flights++;
            }
        }
    }
}
