/**
 * Tables of rows with their place, whatever file they come from.
 *
 * <p>Uses {@code model.input}, {@code model.loading}, {@code model.type}, {@code model.unit}, {@code read.text}.
 */
package org.steelyard.read.table;
