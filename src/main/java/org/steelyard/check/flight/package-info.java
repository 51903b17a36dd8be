/**
 * The checks of one flight, limit by limit.
 *
 * <p>Uses {@code balance}, {@code check.chance}, {@code check.result}, {@code check.text}, {@code model.finding},
 * {@code model.limit}, {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}.
 */
package org.steelyard.check.flight;
