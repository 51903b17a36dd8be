/**
 * Pages of an aircraft type: limits, stations, trim, operational envelope.
 *
 * <p>Uses {@code check.curtail}, {@code check.text}, {@code check.type}, {@code model.finding}, {@code model.limit},
 * {@code model.trim}, {@code model.type}, {@code model.unit}, {@code report.file}, {@code report.html},
 * {@code report.text}.
 */
package org.steelyard.report.type;
