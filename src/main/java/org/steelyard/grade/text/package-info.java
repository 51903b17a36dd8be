/**
 * What exercises, answers and slips are called, and how their figures are written.
 *
 * <p>Uses {@code balance}, {@code check.result}, {@code check.text}, {@code grade.working}, {@code model.finding},
 * {@code model.input}, {@code model.loading}, {@code model.trim}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.grade.text;
