package org.steelyard.analyse.find;

import java.util.List;
import org.steelyard.analyse.column.FlightCloud;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.part.SpreadDrivers;

/**
 * What an analyst asks of a season.
 *
 * @param spreads spread of each measure by each grouping
 * @param drivers what drives the spread of take-off CG by type, then of trim by type and scale
 * @param apart tails, routes and groups of named columns that lie apart from their type
 * @param unusual flights far from the others of their type and scale
 * @param drift control charts by week for each type
 * @param cloud every flight as a point, for pictures
 * @param missing columns named for grouping that no flight has
 * @param leftOut groupings that have more than {@link GroupNames#MOST_GROUPS} different values, in order of name
 */
public record SeasonStatistics(
        List<GroupSpread> spreads,
        List<SpreadDrivers> drivers,
        List<ApartResult> apart,
        List<UnusualFlight> unusual,
        List<DriftChart> drift,
        FlightCloud cloud,
        List<String> missing,
        List<String> leftOut) {

    public SeasonStatistics {
        spreads = List.copyOf(spreads);
        drivers = List.copyOf(drivers);
        apart = List.copyOf(apart);
        unusual = List.copyOf(unusual);
        drift = List.copyOf(drift);
        missing = List.copyOf(missing);
        leftOut = List.copyOf(leftOut);
    }

    /** Statistics of no flights. */
    public static SeasonStatistics none() {
        return new StatisticsTally(List.of()).statistics();
    }
}
