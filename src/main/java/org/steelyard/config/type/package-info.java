/**
 * Files of aircraft types, fleet and airframes.
 *
 * <p>Uses {@code config.source}, {@code config.value}, {@code model.finding}, {@code model.limit}, {@code model.trim},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.config.type;
