/**
 * A heading map proposed for a file that nobody has described.
 *
 * <p>Uses {@code model.input}, {@code model.type}, {@code read.propose}, {@code read.row}, {@code read.table},
 * {@code read.table.text}, {@code read.table.xlsx}, {@code read.text}.
 */
package org.steelyard.read.propose;
