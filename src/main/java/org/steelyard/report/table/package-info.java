/**
 * Tables as data: what a table holds is said here once, and each output lays it out.
 *
 * <p>To add a table, write one class that makes a {@link org.steelyard.report.table.DataTable} of what it is about and
 * hand that to {@code report.html.PageTable}, {@code report.book.BookTable} or {@code cli.text.TerminalTable}; where
 * there is no room for all columns or rows, an output takes {@link org.steelyard.report.table.DataTable#only} and
 * {@link org.steelyard.report.table.DataTable#first}.
 *
 * <p>Uses {@code check.result}, {@code check.text}, {@code model.finding}, {@code model.trim}, {@code model.unit},
 * {@code report.text}.
 */
package org.steelyard.report.table;
