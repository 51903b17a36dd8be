/**
 * Texts of outputs: CSV lines, numbers, the caution.
 *
 * <p>Uses {@code check.result}, {@code check.text}, {@code model.finding}, {@code model.unit}.
 */
package org.steelyard.report.text;
