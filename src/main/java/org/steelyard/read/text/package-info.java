/**
 * Texts as people write them: numbers, dates, units, names.
 *
 * <p>Uses {@code model.input}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.read.text;
