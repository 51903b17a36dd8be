/**
 * Findings: what was found, how serious it is, in which phase of the flight.
 *
 * <p>Uses {@code model.unit}.
 */
package org.steelyard.model.finding;
