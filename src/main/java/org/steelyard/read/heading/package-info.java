/**
 * Which column is what: headings bound to the fields of a heading map.
 *
 * <p>Uses {@code model.input}, {@code model.type}, {@code read.table}, {@code read.text}.
 */
package org.steelyard.read.heading;
