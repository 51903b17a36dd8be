package org.steelyard.analyse.find;

import java.util.List;
import java.util.Locale;
import org.steelyard.analyse.part.PartPull;

/**
 * A tail, route or other group whose take-off CG lies apart from the rest of its type.
 *
 * <p>The rest of the type is without groups that lie farther apart: these are found first and taken out, as one tail
 * far aft makes all others lie forward of the rest. Chance: rank test of the group against that rest, over groups of at
 * least {@link #FEWEST} flights, adjusted by Holm over all groups of that kind in the season and by Bonferroni over the
 * kinds (tail, route and each carried column). Without any true difference at most one season in twenty lists any group
 * wrongly. Listed are groups below 5 % whose difference is also at least 0.2 standard deviations, as thousands of
 * flights make the smallest difference certain.
 *
 * @param grouping tail, route, or the heading of a carried column
 * @param typeId type
 * @param group which group
 * @param flights flights of it
 * @param differencePercentMac its mean take-off CG less that of the rest of the type, aft positive
 * @param lowPercentMac lower end of the 95 % interval of the difference (Welch)
 * @param highPercentMac upper end of it
 * @param effect the difference in standard deviations
 * @param chance adjusted chance
 * @param reasons parts of the load that make the difference, greatest first; empty where none of its flights gives
 *     detail
 */
public record GroupApart(
        String grouping,
        String typeId,
        String group,
        long flights,
        double differencePercentMac,
        double lowPercentMac,
        double highPercentMac,
        double effect,
        double chance,
        List<PartPull> reasons) {

    /** Smaller groups are not tested. */
    public static final int FEWEST = 10;

    /** Adjusted chance below which a group is listed. */
    public static final double CHANCE = 0.05;

    /** Least difference in standard deviations that is listed; small by common practice. */
    public static final double LEAST_EFFECT = 0.2;

    public GroupApart {
        reasons = List.copyOf(reasons);
    }

    /** What was found, in words. */
    public String sentence() {
        return String.format(
                Locale.ROOT,
                "%s flies %.2f %% MAC %s than the rest of %s%s.",
                group,
                Math.abs(differencePercentMac),
                differencePercentMac > 0 ? "farther aft" : "farther forward",
                typeId,
                PartPull.because(reasons, differencePercentMac));
    }
}
