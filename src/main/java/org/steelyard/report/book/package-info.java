/**
 * Parts of workbooks: sheets, styles, charts, streamed rows.
 *
 * <p>Uses {@code check.result}, {@code model.finding}, {@code model.unit}, {@code report.file}, {@code report.table},
 * {@code report.text}, {@code report.words}.
 */
package org.steelyard.report.book;
