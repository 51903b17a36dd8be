/**
 * The page of a season.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.season}, {@code balance},
 * {@code check.result}, {@code check.text}, {@code model.finding}, {@code model.input}, {@code model.limit},
 * {@code model.loading}, {@code model.trim}, {@code model.type}, {@code model.unit}, {@code report.file},
 * {@code report.html}, {@code report.output}, {@code report.table}, {@code report.table.season}, {@code report.text},
 * {@code report.words}.
 */
package org.steelyard.report.output.page;
