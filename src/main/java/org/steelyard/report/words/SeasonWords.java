package org.steelyard.report.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.column.StatusCount;
import org.steelyard.analyse.figure.Excess;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.WorstFlight;
import org.steelyard.check.text.FindingText;
import org.steelyard.model.trim.TrimUnit;
import org.steelyard.model.unit.Counted;
import org.steelyard.report.text.NumberText;

/** What terminal, page and workbook say of a season in the same words. */
public final class SeasonWords {

    /** Statistics of trim are shown this finely, whatever the step of the indicator. */
    static final double TRIM_STEP = 0.01;

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

    private static String worst(String kind, StatusCount count) {
        return String.format(
                Locale.ROOT,
                "Worst %s: %s, %,d of its %s outside a limit (%s).",
                kind,
                count.group(),
                count.breached(),
                Counted.of(count.flights(), "flight"),
                NumberText.share(count.breached(), count.flights()));
    }

    /** By how much a limit is exceeded, as {@code 7.80 % MAC} or {@code 33.3 % of the limit}. */
    public static String excess(WorstFlight worst) {
        Excess excess = worst.excess();
        return NumberText.fixed(excess.figure(), excess.unit() == Excess.Unit.PERCENT_OF_LIMIT ? 1 : 2) + " "
                + excess.unit().symbol();
    }

    /** A figure of statistics of trim. */
    public static String trim(double units, TrimUnit unit) {
        return FindingText.trim(units, TRIM_STEP, unit);
    }

    /** A number format that shows a trim as people say it; the cell stays a number, nose-up positive. */
    public static String trimFormat(int decimals) {
        String digits = decimals == 0 ? "0" : "0." + "0".repeat(decimals);
        return digits + "\" UP\";" + digits + "\" DN\";" + digits;
    }
}
