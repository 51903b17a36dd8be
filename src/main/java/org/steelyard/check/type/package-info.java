/**
 * Whether a type's own data agree with each other, and what cannot be checked with them.
 *
 * <p>Uses {@code check.text}, {@code model.finding}, {@code model.limit}, {@code model.trim}, {@code model.type},
 * {@code model.unit}.
 */
package org.steelyard.check.type;
