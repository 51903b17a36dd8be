/**
 * All reports of a season written together.
 *
 * <p>Uses {@code analyse.change}, {@code analyse.column}, {@code analyse.season}, {@code check.result},
 * {@code model.finding}, {@code model.input}, {@code model.policy}, {@code model.trim}, {@code model.unit},
 * {@code report.book}, {@code report.file}, {@code report.output}, {@code report.output.book},
 * {@code report.output.csv}, {@code report.output.page}, {@code report.text}, {@code report.words}.
 */
package org.steelyard.report.season;
