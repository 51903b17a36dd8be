/**
 * Exercises and grades as pages, workbooks and tables.
 *
 * <p>Uses {@code check.result}, {@code grade.make}, {@code grade.mark}, {@code grade.text}, {@code grade.working},
 * {@code model.finding}, {@code model.input}, {@code model.limit}, {@code model.loading}, {@code model.policy},
 * {@code model.trim}, {@code model.type}, {@code model.unit}, {@code report.book}, {@code report.file},
 * {@code report.html}, {@code report.text}, {@code report.type}, {@code report.words}.
 */
package org.steelyard.report.grade;
