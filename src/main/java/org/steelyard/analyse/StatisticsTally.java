package org.steelyard.analyse;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.steelyard.check.AuditedFlight;
import org.steelyard.check.Status;

/** Takes the flights for the statistics of the season. */
final class StatisticsTally {

    private final FlightColumns columns;
    private final PartTallies parts;
    private final UnusualFlights unusual;

    StatisticsTally(List<String> by) {
        columns = new FlightColumns(by);
        parts = new PartTallies(columns);
        unusual = new UnusualFlights(columns);
    }

    void add(AuditedFlight flight, Status status) {
        columns.add(flight, status);
        Optional<PartFigures> figures = parts.add(flight);
        unusual.add(flight, figures);
    }

    FlightColumns columns() {
        return columns;
    }

    SeasonStatistics statistics() {
        return new SeasonStatistics(
                GroupSpreads.of(columns),
                parts.drivers(),
                apart(),
                unusual.found(parts),
                new DriftCharts(columns, parts).all(),
                new FlightCloud(columns),
                columns.missing());
    }

    private List<ApartResult> apart() {
        GroupsApart test = new GroupsApart(columns, parts);
        List<ApartResult> results = new ArrayList<>();
        results.add(test.of(columns.tails));
        results.add(test.of(columns.routes));
        columns.named().forEach(column -> results.add(test.of(column)));
        return results;
    }
}
