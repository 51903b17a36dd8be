package org.steelyard.analyse;

import java.io.Serializable;
import java.time.LocalDate;
import java.time.YearMonth;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Status;
import org.steelyard.model.Finding;
import org.steelyard.model.Severity;

/** Counts flights and findings by month and type. */
final class MonthTally implements Serializable {

    private static final long serialVersionUID = 1;

    /** Year and month apart, as months of one year share few hash codes. */
    private record Key(int year, int month, String typeId) implements Serializable {

        static Key of(LocalDate date, String typeId) {
            return new Key(date.getYear(), date.getMonthValue(), typeId);
        }
    }

    private static final Comparator<MonthCount> IN_TIME = Comparator.comparing(MonthCount::month)
            .thenComparing(Comparator.comparing(MonthCount::typeId, GroupOrder.BY_NAME));

    private final Map<Key, Counts> groups = new HashMap<>();

    void add(AuditedFlight flight, Status status) {
        Key month =
                Key.of(flight.loading().flight().date(), flight.loading().type().id());
        groups.computeIfAbsent(month, key -> new Counts())
                .add(flight.assessment().findings(), status);
    }

    /** Adds the counts of other flights. */
    void merge(MonthTally other) {
        other.groups.forEach((key, counts) ->
                groups.computeIfAbsent(key, absent -> new Counts()).merge(counts));
    }

    List<MonthCount> counts() {
        return groups.entrySet().stream()
                .map(entry -> entry.getValue().named(entry.getKey()))
                .sorted(IN_TIME)
                .toList();
    }

    private static final class Counts implements Serializable {

        private static final long serialVersionUID = 1;

        private final StatusTally.Counts flights = new StatusTally.Counts();
        private long findings;

        void add(List<Finding> ofOneFlight, Status status) {
            flights.add(status);
            for (Finding finding : ofOneFlight) {
                if (finding.severity() != Severity.NOTE) {
                    findings++;
                }
            }
        }

        void merge(Counts other) {
            flights.merge(other.flights);
            findings += other.findings;
        }

        MonthCount named(Key key) {
            StatusCount count = flights.named(key.typeId());
            return new MonthCount(
                    YearMonth.of(key.year(), key.month()),
                    key.typeId(),
                    count.flights(),
                    count.marginal(),
                    count.breached(),
                    findings);
        }
    }
}
