/**
 * What a check says of a flight: states, margins, remedies.
 *
 * <p>Uses {@code balance}, {@code check.chance}, {@code model.finding}, {@code model.loading}, {@code model.trim},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.check.result;
