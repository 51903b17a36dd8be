/**
 * Columns of a season's figures and the groups that flights fall into.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code balance}, {@code check.result}, {@code model.finding},
 * {@code model.loading}, {@code model.type}, {@code model.unit}.
 */
package org.steelyard.analyse.column;
