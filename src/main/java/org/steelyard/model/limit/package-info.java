/**
 * Limits of mass, CG and loads.
 *
 * <p>Uses {@code model.finding}, {@code model.unit}.
 */
package org.steelyard.model.limit;
