/**
 * Loadings from rows of flights and rows of load items.
 *
 * <p>Uses {@code model.input}, {@code model.loading}, {@code model.type}, {@code read.heading}, {@code read.row},
 * {@code read.table}, {@code read.text}.
 */
package org.steelyard.read.loading;
