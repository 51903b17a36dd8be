/**
 * From one loading to its states (dry operating, zero fuel, ramp, take-off, landing), its fuel path and its stabilizer
 * trim. Mass and moment are summed and divided once.
 *
 * <p>All of it is pure: the same arguments give the same answer.
 */
package org.steelyard.balance;
