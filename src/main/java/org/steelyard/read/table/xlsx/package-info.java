/**
 * Tables from workbooks, event by event.
 *
 * <p>Uses {@code model.input}, {@code read.table}, {@code read.text}.
 */
package org.steelyard.read.table.xlsx;
