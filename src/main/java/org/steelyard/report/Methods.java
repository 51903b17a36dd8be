package org.steelyard.report;

import java.util.List;

/** How the figures of the outputs are computed, in words. */
final class Methods {

    /**
     * One method.
     *
     * @param key short name
     * @param title what it is about
     * @param text how it is done
     */
    record Method(String key, String title, String text) {}

    static final List<Method> ALL = List.of(
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
                    "ranked by how far outside their worst limit lies, as a multiple of the distance that the policy"
                            + " calls marginal for that kind of limit"));

    private Methods() {}
}
