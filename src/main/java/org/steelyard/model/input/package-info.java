/**
 * How inputs are laid out, and what is wrong with rows of them.
 *
 * <p>Uses {@code model.finding}, {@code model.loading}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.model.input;
