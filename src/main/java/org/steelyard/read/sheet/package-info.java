/**
 * Load sheets that students hand in, and what they claim.
 *
 * <p>Uses {@code model.input}, {@code model.loading}, {@code model.type}, {@code model.unit}, {@code read.heading},
 * {@code read.loading}, {@code read.propose}, {@code read.row}, {@code read.season}, {@code read.table},
 * {@code read.table.xlsx}, {@code read.text}.
 */
package org.steelyard.read.sheet;
