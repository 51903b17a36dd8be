package org.steelyard.analyse.find;

import java.util.List;
import java.util.Optional;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.FlightColumns;
import org.steelyard.analyse.column.SeasonFigures;
import org.steelyard.analyse.part.PartFigures;
import org.steelyard.analyse.part.PartTallies;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.check.result.Status;

/** Takes the flights for the statistics of the season. */
public final class StatisticsTally {

    private final FlightColumns columns;
    private final PartTallies parts;
    private final UnusualFlights unusual;

    public StatisticsTally(List<String> by) {
        columns = new FlightColumns(by);
        parts = new PartTallies(columns);
        unusual = new UnusualFlights(columns);
    }

    public void add(AuditedFlight flight, Status status) {
        columns.add(flight, status);
        Optional<PartFigures> figures = parts.add(flight, columns);
        unusual.add(flight, figures);
    }

    public FlightColumns columns() {
        return columns;
    }

    public SeasonStatistics statistics() {
        return statistics(columns, parts, unusual, FlightCloud.of(columns));
    }

    /** The statistics of any figures. */
    public static SeasonStatistics statistics(
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
