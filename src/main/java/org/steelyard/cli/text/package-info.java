/**
 * What the terminal shows: tables, answers, progress.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.season}, {@code balance}, {@code check.text}, {@code model.finding},
 * {@code model.input}, {@code model.limit}, {@code model.loading}, {@code model.type}, {@code model.unit},
 * {@code read.propose}, {@code report.flight}, {@code report.output}, {@code report.table},
 * {@code report.table.season}, {@code report.text}, {@code report.words}, {@code run}.
 */
package org.steelyard.cli.text;
