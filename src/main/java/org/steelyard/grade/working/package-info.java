/**
 * An exercise worked through: answers, limits and the slips that lead elsewhere.
 *
 * <p>Uses {@code balance}, {@code check.flight}, {@code check.result}, {@code grade.working}, {@code model.finding},
 * {@code model.input}, {@code model.limit}, {@code model.loading}, {@code model.policy}, {@code model.trim},
 * {@code model.type}, {@code model.unit}.
 */
package org.steelyard.grade.working;
