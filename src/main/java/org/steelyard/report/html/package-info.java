/**
 * Parts of pages: frame, tables, pictures.
 *
 * <p>Uses {@code analyse.figure}, {@code analyse.season}, {@code check.result}, {@code check.text},
 * {@code model.finding}, {@code model.limit}, {@code model.trim}, {@code model.type}, {@code model.unit},
 * {@code report.table}, {@code report.text}, {@code report.words}.
 */
package org.steelyard.report.html;
