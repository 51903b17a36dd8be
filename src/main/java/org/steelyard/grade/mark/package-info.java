/**
 * Marks for what a student handed in, and what went wrong.
 *
 * <p>Uses {@code balance}, {@code check.result}, {@code grade.mark}, {@code grade.text}, {@code grade.working},
 * {@code model.finding}, {@code model.input}, {@code model.loading}, {@code model.policy}, {@code model.trim},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.grade.mark;
