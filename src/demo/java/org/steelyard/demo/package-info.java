/**
 * Makes the demo season: a summer of an invented island airline and its flying club, in the three kinds of files that
 * users meet, with planted faults and a key to them. The same configuration gives the same bytes on every machine.
 *
 * <p>Uses {@code balance}, {@code check.flight}, {@code check.result}, {@code config}, {@code demo},
 * {@code grade.make}, {@code grade.mark}, {@code grade.text}, {@code grade.working}, {@code model.finding},
 * {@code model.input}, {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}, {@code report.file}, {@code report.grade}.
 */
package org.steelyard.demo;
