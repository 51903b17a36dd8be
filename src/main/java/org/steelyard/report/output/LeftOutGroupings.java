package org.steelyard.report.output;

import java.util.List;
import org.steelyard.analyse.column.GroupNames;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.model.unit.Counted;
import org.steelyard.model.unit.OneLine;

/** What every output says of groupings that have too many different values to be shown. */
public final class LeftOutGroupings {

    private static final String TOO_MANY = "more than " + Counted.number(GroupNames.MOST_GROUPS) + " different values";

    private LeftOutGroupings() {}

    /**
     * The groupings that were left out.
     *
     * @param summary the season
     * @return a sentence of each
     */
    public static List<String> of(SeasonSummary summary) {
        return summary.statistics().leftOut().stream()
                .map(grouping -> "No statistics by '" + OneLine.value(grouping) + "': it has " + TOO_MANY + ".")
                .toList();
    }

    /** Why no route is named; blank where routes are, or there are none. */
    public static String routes(SeasonSummary summary) {
        return summary.routes().isEmpty() && summary.statistics().leftOut().contains("route")
                ? "Left out: there are " + TOO_MANY + "."
                : "";
    }
}
