/**
 * Curtailed envelopes, and what each source of error takes from them.
 *
 * <p>Uses {@code balance}, {@code check.chance}, {@code model.finding}, {@code model.limit}, {@code model.policy},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.check.curtail;
