/**
 * Texts of outputs: CSV lines, numbers, the caution.
 *
 * <p>Uses {@code check.text}, {@code model.unit}.
 */
package org.steelyard.report.text;
