package org.steelyard.spark;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.spark.merge.MergeableTally;
import org.steelyard.spark.merge.MergedReports;

/** What is to be known of results that were put together from parts. */
final class Remarks {

    private Remarks() {}

    static List<String> of(MergeableTally tally, long rejectedShown, long rejected) {
        List<String> remarks = new ArrayList<>();
        remarks.add("Computed in parts and put together: counts, means, standard deviations, least and greatest values"
                + " do not depend on the parts.");
        double error = tally.rankError();
        if (error > 0) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "Percentiles of groups of more than %,d flights are estimates (KLL sketch, k = %,d): the true rank"
                            + " of each lies within %.2f percentage points with 99 %% confidence, and intervals are"
                            + " wider by that. Smaller groups are exact. Two runs may differ within that bound.",
                    MergeableTally.exactUpTo(),
                    KllRanks.K,
                    100 * error));
            remarks.add("In groups of that size, tails and routes are compared by ranks of their take-off CG in cells of"
                    + " 0.01 % MAC, and histograms of trim count cells of 0.001 units.");
        }
        if (tally.flights() > MergedReports.LISTED) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The workbook lists the first %,d of %,d flights with their findings; flights.parquet and"
                            + " findings.parquet hold all. Pictures and the page show a sample that does not depend on"
                            + " the parts.",
                    MergedReports.LISTED,
                    tally.flights()));
        }
        if (rejected > rejectedShown) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "The first %,d of %,d rejected rows are shown; the folder rejected holds all.",
                    rejectedShown,
                    rejected));
        }
        return remarks;
    }
}
