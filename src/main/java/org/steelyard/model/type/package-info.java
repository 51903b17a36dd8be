/**
 * Aircraft types and tails.
 *
 * <p>Uses {@code model.finding}, {@code model.limit}, {@code model.trim}, {@code model.unit}.
 */
package org.steelyard.model.type;
