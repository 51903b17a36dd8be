package org.steelyard.analyse.find;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.steelyard.analyse.part.PartPull;

/**
 * Control chart of the weekly mean take-off CG of one type, and whether it shifted for good.
 *
 * <p>Weeks: with s the standard deviation within weeks, pooled over all of them with ν degrees of freedom, N flights
 * and n of them in a week, a weekly mean is a signal beyond {@code mean ± t s √(1/n - 1/N)}; t is Student's quantile at
 * ν for a chance of 2.5 % shared out among the weeks (analysis of means: Ott, A Graphical Procedure, Industrial Quality
 * Control 24, 1967; Bonferroni's inequality). Shift: the greatest difference in t between the flights before and after
 * any week, against 1,999 draws of the same weeks without shift, seeded; a signal at 2.5 %. So a chart without any
 * change gives a signal in at most one of twenty seasons, if flights vary independently and about normally within
 * weeks.
 *
 * @param typeId type
 * @param flights flights on the chart
 * @param meanPercentMac centre line: mean of all flights
 * @param withinSd standard deviation within weeks
 * @param factor t, by which the limits are drawn
 * @param weeks weeks with flights, in order
 * @param shift the shift, if there is one
 */
public record DriftChart(
        String typeId,
        long flights,
        double meanPercentMac,
        double withinSd,
        double factor,
        List<Week> weeks,
        Optional<Shift> shift) {

    /** Chance that a chart of a season without change gives any signal. */
    public static final double FALSE_ALARM = 0.05;

    /**
     * One week.
     *
     * @param week as 2026-W14
     * @param flights flights
     * @param meanPercentMac mean take-off CG
     * @param lowPercentMac lower limit
     * @param highPercentMac upper limit
     */
    public record Week(String week, long flights, double meanPercentMac, double lowPercentMac, double highPercentMac) {

        /** Whether the mean lies outside the limits. */
        public boolean signal() {
            return meanPercentMac < lowPercentMac || meanPercentMac > highPercentMac;
        }
    }

    /**
     * From some week on the CG is another.
     *
     * @param fromWeek first week after it
     * @param beforePercentMac mean before
     * @param afterPercentMac mean from then on
     * @param chance chance of a shift as great where there is none
     * @param reasons parts of the load that make the difference
     */
    public record Shift(
            String fromWeek, double beforePercentMac, double afterPercentMac, double chance, List<PartPull> reasons) {

        public Shift {
            reasons = List.copyOf(reasons);
        }

        /** The shift in words. */
        public String sentence() {
            double move = afterPercentMac - beforePercentMac;
            return String.format(
                    Locale.ROOT,
                    "From %s on take-off CG lies %.2f %% MAC %s%s.",
                    fromWeek,
                    Math.abs(move),
                    move > 0 ? "farther aft" : "farther forward",
                    PartPull.because(reasons, move));
        }
    }

    public DriftChart {
        weeks = List.copyOf(weeks);
    }

    /** Weeks outside their limits. */
    public List<Week> signals() {
        return weeks.stream().filter(Week::signal).toList();
    }
}
