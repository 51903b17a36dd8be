/**
 * From one loading to its states (dry operating, zero fuel, ramp, take-off, landing), its fuel path and its stabilizer
 * trim. Mass and moment are summed and divided once.
 *
 * <p>All of it is pure: the same arguments give the same answer.
 *
 * <p>Uses {@code model.finding}, {@code model.loading}, {@code model.policy}, {@code model.trim}, {@code model.type},
 * {@code model.unit}.
 */
package org.steelyard.balance;
