/**
 * Where trim scales come from and what else they say: the inverse of a scale, a scale fitted to recorded settings, a
 * scale estimated from the balance of moments, and cards to read settings from. Pure: what is drawn by chance is drawn
 * by the caller.
 */
package org.steelyard.trim;
