/**
 * How uncertain a load is, and how likely a limit is exceeded.
 *
 * <p>Uses {@code balance}, {@code model.finding}, {@code model.limit}, {@code model.loading}, {@code model.policy},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.check.chance;
