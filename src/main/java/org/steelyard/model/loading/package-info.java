/**
 * What one flight carries, and where.
 *
 * <p>Uses {@code model.trim}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.model.loading;
