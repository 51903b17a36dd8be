/**
 * Files that appear whole or not at all, and what the program knows as its own.
 *
 * <p>Uses {@code model.unit}, {@code report.text}.
 */
package org.steelyard.report.file;
