/**
 * The files of a season, read in order, with rows that were put right.
 *
 * <p>Uses {@code model.input}, {@code model.loading}, {@code model.unit}, {@code read.heading}, {@code read.loading},
 * {@code read.row}, {@code read.table}, {@code read.table.text}, {@code read.table.xlsx}, {@code read.text}.
 */
package org.steelyard.read.season;
