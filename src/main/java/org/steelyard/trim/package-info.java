/**
 * Where trim scales come from and what else they say: the inverse of a scale, a scale fitted to recorded settings, a
 * scale estimated from the balance of moments, and cards to read settings from. Pure: what is drawn by chance is drawn
 * by the caller.
 *
 * <p>Uses {@code model.finding}, {@code model.limit}, {@code model.trim}, {@code model.type}, {@code model.unit},
 * {@code trim}.
 */
package org.steelyard.trim;
