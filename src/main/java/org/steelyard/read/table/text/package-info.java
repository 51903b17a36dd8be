/**
 * Tables from CSV files.
 *
 * <p>Uses {@code model.input}, {@code read.table}.
 */
package org.steelyard.read.table.text;
