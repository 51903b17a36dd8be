/**
 * Columns of the lists of a season, each described once for every output: name, unit, kind, meaning, how it is got and
 * how it stands on a sheet.
 *
 * <p>Uses {@code analyse.column}, {@code balance}, {@code check.result}, {@code check.text}, {@code model.finding},
 * {@code model.input}, {@code model.loading}, {@code model.type}, {@code model.unit}, {@code remedy},
 * {@code report.column}, {@code report.text}, {@code report.words}.
 */
package org.steelyard.report.column;
