/**
 * Options that several commands share, and how a command ends.
 *
 * <p>Uses {@code config}, {@code config.source}, {@code model.input}, {@code read.table}, {@code report.file},
 * {@code run}.
 */
package org.steelyard.cli.option;
