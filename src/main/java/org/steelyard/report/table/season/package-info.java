/**
 * The tables of a season, one class each.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.find}, {@code analyse.part},
 * {@code analyse.season}, {@code check.text}, {@code model.finding}, {@code model.trim}, {@code model.unit},
 * {@code report.output}, {@code report.table}, {@code report.text}, {@code report.words}.
 */
package org.steelyard.report.table.season;
