/**
 * One audit from a season's files to its reports, without a terminal: the entry point for whoever calls the project as
 * a library. A reading thread makes batches of rows, workers turn them into audited flights, and the calling thread
 * takes them in order, so that the outputs do not depend on the number of threads.
 *
 * <p>Uses {@code analyse.season}, {@code balance}, {@code check.flight}, {@code check.result}, {@code check.type},
 * {@code config}, {@code config.file}, {@code config.section}, {@code grade.mark}, {@code grade.working},
 * {@code model.finding}, {@code model.input}, {@code model.limit}, {@code model.loading}, {@code model.policy},
 * {@code model.trim}, {@code model.type}, {@code model.unit}, {@code read.loading}, {@code read.row},
 * {@code read.season}, {@code read.sheet}, {@code read.table}, {@code remedy}, {@code report.file},
 * {@code report.output}, {@code report.season}, {@code report.text}, {@code trim}.
 */
package org.steelyard.run;
