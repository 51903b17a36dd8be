package org.steelyard.report.output.page;

/**
 * How many flights a page holds one by one, so that its size is bounded.
 *
 * @param breached at most so many breached flights
 * @param outside at most so many breached and marginal flights together
 * @param all at most so many flights
 */
public record PageLimits(int breached, int outside, int all) {

    /** Pages of some ten megabytes that a browser shows without delay. */
    public static final PageLimits USUAL = new PageLimits(10_000, 15_000, 20_000);
}
