/**
 * Values as files of the configuration write them, and keys and rows that hold them.
 *
 * <p>Uses {@code config.source}, {@code model.input}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.config.value;
