/**
 * Load summaries and trim cards.
 *
 * <p>Uses {@code balance}, {@code check.chance}, {@code check.result}, {@code check.text}, {@code check.type},
 * {@code model.finding}, {@code model.limit}, {@code model.loading}, {@code model.trim}, {@code model.type},
 * {@code model.unit}, {@code remedy}, {@code report.book}, {@code report.file}, {@code report.flight},
 * {@code report.html}, {@code report.text}, {@code report.words}, {@code trim}.
 */
package org.steelyard.report.flight;
