/**
 * The commands: they wire the other packages, show progress, print the summary and choose the exit code.
 *
 * <p>Uses {@code analyse.change}, {@code check.curtail}, {@code check.text}, {@code check.type}, {@code cli.option},
 * {@code cli.text}, {@code config}, {@code config.file}, {@code config.section}, {@code config.source},
 * {@code config.value}, {@code grade.make}, {@code grade.mark}, {@code grade.text}, {@code model.finding},
 * {@code model.input}, {@code model.limit}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}, {@code read.loading}, {@code read.propose}, {@code read.row}, {@code read.table},
 * {@code report.file}, {@code report.flight}, {@code report.grade}, {@code report.output}, {@code report.season},
 * {@code report.text}, {@code report.type}, {@code run}, {@code trim}.
 */
package org.steelyard.cli;
