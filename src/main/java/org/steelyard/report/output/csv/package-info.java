/**
 * Outputs of a season as tables.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.season}, {@code check.result}, {@code check.type},
 * {@code model.finding}, {@code model.input}, {@code model.loading}, {@code model.policy}, {@code read.row},
 * {@code read.table}, {@code report.column}, {@code report.file}, {@code report.output}, {@code report.text},
 * {@code report.words}.
 */
package org.steelyard.report.output.csv;
