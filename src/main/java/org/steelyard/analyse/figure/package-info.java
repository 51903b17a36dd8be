/**
 * Figures of many numbers: spreads, percentiles, tests of differences, sums that keep their digits.
 *
 * <p>Uses {@code check.result}, {@code model.finding}, {@code model.unit}.
 */
package org.steelyard.analyse.figure;
