/**
 * Exercises made for a purpose and a difficulty.
 *
 * <p>Uses {@code balance}, {@code check.flight}, {@code check.result}, {@code grade.text}, {@code grade.working},
 * {@code model.finding}, {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}.
 */
package org.steelyard.grade.make;
