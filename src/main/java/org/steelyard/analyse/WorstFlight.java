package org.steelyard.analyse;

import org.steelyard.check.AuditedFlight;
import org.steelyard.model.Finding;

/**
 * A flight far outside a limit.
 *
 * @param flight the flight
 * @param finding its worst breach
 * @param excess how far outside, as a multiple of the policy's marginal distance for that kind of limit, so that kinds
 *     compare
 */
public record WorstFlight(AuditedFlight flight, Finding finding, double excess) {}
