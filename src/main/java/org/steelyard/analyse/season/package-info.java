/**
 * A season summed up: findings, worst flights, typical trim, recorded trim, tables of it.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.find}, {@code balance}, {@code check.result},
 * {@code model.finding}, {@code model.loading}, {@code model.policy}, {@code model.trim}.
 */
package org.steelyard.analyse.season;
