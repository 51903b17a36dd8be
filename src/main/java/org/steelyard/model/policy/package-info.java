/**
 * What the operator decides: chances, duplicates, last-minute changes, seating.
 *
 * <p>Uses {@code model.input}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.model.policy;
