/**
 * From the states of a flight to findings: what is outside a limit, by how much, how likely the true value is outside,
 * and what would put it right. A point on a limit line is inside.
 *
 * <p>All of it is pure: the same arguments give the same answer.
 */
package org.steelyard.check;
