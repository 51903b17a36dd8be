package org.steelyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.Excess;
import org.steelyard.analyse.SeasonStatistics;
import org.steelyard.analyse.SeasonSummary;
import org.steelyard.analyse.StatusCount;
import org.steelyard.analyse.TrimGroup;
import org.steelyard.analyse.WorstFlight;
import org.steelyard.check.FindingText;
import org.steelyard.model.OneLine;
import org.steelyard.model.TrimUnit;

/** What terminal, page and workbook say of a season in the same words. */
public final class SeasonWords {

    /** Statistics of trim are shown this finely, whatever the step of the indicator. */
    static final double TRIM_STEP = 0.01;

    /** Headings of a typical range: its ends and its middle. */
    static final List<String> TYPICAL = List.of("5 %", "Median", "95 %");

    static final String NO_TRIM = "No flight has a trim: its type has no scale, or no flap setting was given.";

    private static final String TOO_MANY =
            "more than " + Shown.count(SeasonStatistics.MOST_GROUPS) + " different values";

    private SeasonWords() {}

    /**
     * The tail and the route with the greatest share of flights outside a limit.
     *
     * @param summary the season
     * @return a sentence of each; none where no group has both enough flights and a breached one
     */
    public static List<String> worstGroups(SeasonSummary summary) {
        List<String> sentences = new ArrayList<>();
        summary.worstTail().ifPresent(tail -> sentences.add(worst("tail", tail)));
        summary.worstRoute().ifPresent(route -> sentences.add(worst("route", route)));
        return sentences;
    }

    /**
     * The groupings that the statistics leave out.
     *
     * @param summary the season
     * @return a sentence of each
     */
    public static List<String> leftOut(SeasonSummary summary) {
        return summary.statistics().leftOut().stream()
                .map(grouping -> "No statistics by '" + OneLine.value(grouping) + "': it has " + TOO_MANY + ".")
                .toList();
    }

    /** Why no route is named; blank where routes are, or there are none. */
    static String tooManyRoutes(SeasonSummary summary) {
        return summary.routes().isEmpty() && summary.statistics().leftOut().contains("route")
                ? "Left out: there are " + TOO_MANY + "."
                : "";
    }

    private static String worst(String kind, StatusCount count) {
        return String.format(
                Locale.ROOT,
                "Worst %s: %s, %,d of its %s outside a limit (%s).",
                kind,
                count.group(),
                count.breached(),
                Shown.counted(count.flights(), "flight"),
                Shown.share(count.breached(), count.flights()));
    }

    /** By how much a limit is exceeded, as {@code 7.80 % MAC} or {@code 33.3 % of the limit}. */
    static String excess(WorstFlight worst) {
        Excess excess = worst.excess();
        return Shown.fixed(excess.figure(), excess.unit() == Excess.Unit.PERCENT_OF_LIMIT ? 1 : 2) + " "
                + excess.unit().symbol();
    }

    /** Type and flap settings that have a trim. */
    static List<TrimGroup> withTrim(SeasonSummary summary) {
        return summary.trim().stream()
                .filter(group -> group.trimUnits().isPresent())
                .toList();
    }

    /** The ends and the middle of the typical range of a group that has a trim. */
    static List<String> typical(TrimGroup group) {
        return group.trimUnits().stream()
                .flatMap(trim ->
                        List.of(trim.p5(), trim.median(), trim.p95()).stream().map(units -> trim(units, group.unit())))
                .toList();
    }

    /** A figure of statistics of trim. */
    static String trim(double units, TrimUnit unit) {
        return FindingText.trim(units, TRIM_STEP, unit);
    }

    /** A number format that shows a trim as people say it; the cell stays a number, nose-up positive. */
    static String trimFormat(int decimals) {
        String digits = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
        return digits + "\" UP\";" + digits + "\" DN\";" + digits;
    }
}
