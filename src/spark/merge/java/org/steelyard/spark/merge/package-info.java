/**
 * A season in parts: tallies of parts that merge, the flights that outputs show of all of them, and the reports of what
 * was merged. Needs no Spark, so the gate compiles and tests it; only the engine uses it, so it is not shipped.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.find}, {@code analyse.part},
 * {@code analyse.season}, {@code check.result}, {@code model.input}, {@code model.loading}, {@code model.policy},
 * {@code model.type}, {@code report.file}, {@code report.output}, {@code report.output.book},
 * {@code report.output.csv}, {@code report.output.page}, {@code report.season}, {@code spark.merge}.
 */
package org.steelyard.spark.merge;
