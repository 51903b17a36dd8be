/**
 * Figures of many numbers: spreads, percentiles, tests of differences, sums that keep their digits.
 *
 * <p>Uses {@code model.finding}.
 */
package org.steelyard.analyse.figure;
