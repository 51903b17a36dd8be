/**
 * What every output of a season takes and gives.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.season}, {@code check.result}, {@code check.type},
 * {@code model.finding}, {@code model.input}, {@code model.policy}, {@code model.unit}, {@code report.file},
 * {@code report.text}.
 */
package org.steelyard.report.output;
