package org.steelyard.report.words;

import java.util.List;
import org.steelyard.analyse.figure.Spread;

/** How the figures of the outputs are computed, in words. */
public final class Methods {

    /**
     * One method.
     *
     * @param key short name
     * @param title what it is about
     * @param text how it is done
     */
    public record Method(String key, String title, String text) {}

    public static final List<Method> ALL = List.of(
            new Method(
                    "percentiles",
                    "Percentiles",
                    "inclusive: linear between order statistics at rank 1 + p (n - 1), definition 7 of Hyndman and Fan"
                            + " (1996); over all flights of the group, none sampled"),
            new Method("mean", "Mean", "arithmetic mean, by a compensated sum"),
            new Method(
                    "standard_deviation",
                    "Standard deviation",
                    "of the sample, divisor n - 1, by a corrected two-pass sum; none for a single flight"),
            new Method(
                    "typical_range",
                    "Typical range",
                    "from the 5th to the 95th percentile; each end with a 95 % interval by order statistics (binomial,"
                            + " exact), open where there are too few flights; CG within a type, trim within a type,"
                            + " flap setting and, where the scale is for one, thrust rating"),
            new Method(
                    "drivers",
                    "What drives the spread",
                    "pull of a part c = m (a - mean CG) / M; share = Cov(c, CG) / Var(CG), all together 1; trim by way of"
                            + " its straight line in CG; only flights with zones, holds and tanks given"),
            new Method(
                    "groups_apart",
                    "Groups apart",
                    "take-off CG against the rest of the type by the rank test of Wilcoxon, Mann and Whitney, adjusted by"
                            + " Holm over all groups of a kind and by Bonferroni over the kinds; the farthest are taken out"
                            + " before the others are tested again; below 5 % and from 0.2 sd on"),
            new Method(
                    "unusual_flights",
                    "Unusual flights",
                    "robust score 0.6745 (x - median) / MAD beyond 3.5 within type, flap setting and, where"
                            + " the scale is for one, thrust rating"),
            new Method(
                    "drift",
                    "Drift by week",
                    "weekly means against limits of the analysis of means at 2.5 %, and the greatest lasting step against"
                            + " 1,999 seeded draws at 2.5 %"),
            new Method("cg", "Centre of gravity", "masses and moments are summed and divided once; aft is positive"),
            new Method("trim", "Trim", "nose-up is positive; read within the type's scale, never beyond it"),
            new Method(
                    "limits", "Limits", "a point on a limit is inside; a margin is positive inside, negative outside"),
            new Method(
                    "chance",
                    "Chance of being outside",
                    "mass and moment jointly normal, in closed form from the policy's standard deviations; passengers of"
                            + " a zone on seats drawn without replacement; the limit's slope against mass counts"),
            new Method(
                    "remedy",
                    "What would put it right",
                    "the least mass to move between holds and zones, failing that to leave behind, failing that as"
                            + " ballast, failing that a change of fuel; exact for whole passengers and bags, what can be"
                            + " divided rounded up; each put through the audit again"),
            new Method(
                    "worst_flights",
                    "Worst flights",
                    "by what is exceeded: CG, mass, structure, fuel, trim, last minute; within a kind by how far outside"
                            + " its worst limit a flight lies, in % MAC, in units of trim or in percent of the limit; a"
                            + " flight that exceeds several kinds stands under each"),
            new Method(
                    "worst_groups",
                    "Worst tails and routes",
                    "by the share of flights outside a limit, then by the share close to one; groups of few flights"
                            + " come last and are not named as worst"),
            new Method(
                    "few_flights",
                    "Few flights",
                    "fewer than " + Spread.FEW + ": the 5th and 95th percentile then lie between the two outermost"
                            + " values"));

    private Methods() {}
}
