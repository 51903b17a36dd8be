/**
 * How findings write their figures: in the units of the type, rounded towards the safe side.
 *
 * <p>Uses {@code model.finding}, {@code model.limit}, {@code model.trim}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.check.text;
