/**
 * What would put a breached flight right: the least mass to move between holds and zones, failing that the least load
 * to leave behind, then the least ballast, then a change of fuel. The search is exact, and whatever it finds goes back
 * through balance and checks before it is said.
 *
 * <p>All of it is pure: the same arguments give the same answer.
 *
 * <p>Uses {@code balance}, {@code check.flight}, {@code check.result}, {@code check.text}, {@code model.finding},
 * {@code model.limit}, {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}, {@code remedy}.
 */
package org.steelyard.remedy;
