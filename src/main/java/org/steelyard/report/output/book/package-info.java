/**
 * Outputs of a season as a workbook.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.find}, {@code analyse.part},
 * {@code analyse.season}, {@code check.result}, {@code check.text}, {@code model.finding}, {@code model.input},
 * {@code model.limit}, {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}, {@code report.book}, {@code report.column}, {@code report.file}, {@code report.output},
 * {@code report.output.book}, {@code report.table}, {@code report.table.season}, {@code report.text},
 * {@code report.words}.
 */
package org.steelyard.report.output.book;
