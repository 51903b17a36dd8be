package org.steelyard.analyse;

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
        Optional<PartFigures> figures = parts.add(flight, columns);
        unusual.add(flight, figures);
    }

    FlightColumns columns() {
        return columns;
    }

    SeasonStatistics statistics() {
        return statistics(columns, parts, unusual, FlightCloud.of(columns));
    }

    /** The statistics of any figures. */
    static SeasonStatistics statistics(
            SeasonFigures figures, PartTallies parts, UnusualFlights unusual, FlightCloud cloud) {
        return new SeasonStatistics(
                GroupSpreads.of(figures),
                parts.drivers(),
                new GroupsApart(figures, parts).all(),
                unusual.found(figures, parts),
                new DriftCharts(figures, parts).all(),
                cloud,
                figures.missing(),
                figures.leftOut());
    }
}
