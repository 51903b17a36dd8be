/**
 * What stands out in a season: groups apart, drift of a tail, unusual flights.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.find}, {@code analyse.part},
 * {@code check.result}, {@code model.loading}, {@code model.unit}.
 */
package org.steelyard.analyse.find;
