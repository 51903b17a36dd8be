/**
 * Trim scales and what they rest on.
 *
 * <p>Uses {@code model.finding}, {@code model.limit}, {@code model.unit}.
 */
package org.steelyard.model.trim;
