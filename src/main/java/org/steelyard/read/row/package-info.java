/**
 * Rules by which the cells of a row become a load.
 *
 * <p>Uses {@code model.finding}, {@code model.input}, {@code model.loading}, {@code model.trim}, {@code model.type},
 * {@code model.unit}, {@code read.heading}, {@code read.table}, {@code read.text}.
 */
package org.steelyard.read.row;
