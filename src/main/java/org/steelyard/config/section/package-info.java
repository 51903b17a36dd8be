/**
 * Sections of configuration files as the program writes them.
 *
 * <p>Uses {@code config}, {@code model.finding}, {@code model.input}, {@code model.limit}, {@code model.trim},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.config.section;
