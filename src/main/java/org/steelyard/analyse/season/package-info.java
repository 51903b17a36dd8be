/**
 * A season summed up: findings, worst flights, typical trim, recorded trim, tables of it.
 *
 * <p>Uses {@code analyse.column}, {@code analyse.figure}, {@code analyse.find}, {@code analyse.part},
 * {@code analyse.season}, {@code balance}, {@code check.result}, {@code model.finding}, {@code model.loading},
 * {@code model.policy}, {@code model.trim}, {@code model.type}.
 */
package org.steelyard.analyse.season;
