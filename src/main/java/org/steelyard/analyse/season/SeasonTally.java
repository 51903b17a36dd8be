package org.steelyard.analyse.season;

import java.time.YearMonth;
import java.util.ArrayList;
import java.util.List;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.GroupKind;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.column.StatusTally;
import org.steelyard.analyse.find.StatisticsTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;
import org.steelyard.model.policy.Policy;
import org.steelyard.model.policy.RecordedTrimRule;

/**
 * Takes the flights of a season one after the other and holds what the summary needs of them: counters, some 55 bytes
 * for each flight (CG, trim, masses and groups), and the worst flights whole. Exact: nothing is sampled or estimated.
 * The summary does not depend on the order of the flights, but for ties among the worst. For one thread.
 */
public final class SeasonTally {

    /** Flights listed of each kind of limit. */
    public static final int WORST = 10;

    private final SeasonCounts counts;
    private final StatisticsTally statistics;
    private final WorstFlights worst;

    /**
     * An empty season.
     *
     * @param policy the operator's rules
     */
    public SeasonTally(Policy policy) {
        this(policy, List.of());
    }

    /**
     * An empty season with groupings of its own.
     *
     * @param policy the operator's rules
     * @param by headings of carried columns by which statistics are grouped, beside the one that the policy names
     */
    public SeasonTally(Policy policy, List<String> by) {
        statistics = new StatisticsTally(columns(policy, by));
        worst = new WorstFlights(WORST);
        counts = new SeasonCounts(policy);
    }

    /** The carried columns by which statistics are grouped. */
    public static List<String> columns(Policy policy, List<String> by) {
        List<String> columns = new ArrayList<>();
        policy.recordedTrim()
                .map(RecordedTrimRule::groupBy)
                .filter(name -> !name.isBlank())
                .ifPresent(columns::add);
        columns.addAll(by);
        return columns;
    }

    /**
     * Takes one more flight.
     *
     * @param flight the flight
     */
    public void add(AuditedFlight flight) {
        Status status = flight.assessment().status();
        counts.add(flight, status);
        statistics.add(flight, status);
        worst.add(flight);
    }

    /**
     * What the season comes to so far.
     *
     * @return the summary of all flights taken
     */
    public SeasonSummary summary() {
        FlightColumns columns = statistics.columns();
        StatusTally<String> routes = columns.tally(columns.column(GroupKind.ROUTE));
        routes.remove(""); // flights of which neither end is known
        return new SeasonSummary(
                counts.all().named("all"),
                columns.tally(columns.column(GroupKind.TYPE)).counts(type -> type, StatusCount.BY_NAME),
                columns.tally(columns.column(GroupKind.TAIL)).counts(tail -> tail, StatusCount.WORST_FIRST),
                routes.counts(route -> route, StatusCount.WORST_FIRST),
                counts.findings().counts(),
                counts.trim().groups(columns),
                worst.worstFirst(),
                columns.tally(columns.column(GroupKind.MONTH)).counts(YearMonth::toString, StatusCount.IN_TIME),
                counts.recordedTrim().groups(columns.leftOut()),
                statistics.statistics(),
                counts.likelyOutside());
    }
}
