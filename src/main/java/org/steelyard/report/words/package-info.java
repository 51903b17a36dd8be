/**
 * Words and figures that several outputs share.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.season}, {@code balance},
 * {@code check.chance}, {@code check.result}, {@code check.text}, {@code model.finding}, {@code model.limit},
 * {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type}, {@code model.unit},
 * {@code report.output}, {@code report.text}.
 */
package org.steelyard.report.words;
