package org.steelyard.analyse.season;

import java.util.OptionalDouble;

/**
 * Recorded take-off trim settings against the right ones, over a group of flights that have both.
 *
 * @param kind what the flights have in common: tail, or the heading of a carried column
 * @param name which one
 * @param flights flights with a recorded and a right setting
 * @param meanUnits mean of recorded less right setting, positive where it is too much nose-up
 * @param sdUnits sample standard deviation of it with divisor n - 1; empty for one flight
 * @param noseUp flights farther off than the policy's marginal distance on the nose-up side
 * @param noseDown the same on the nose-down side
 */
public record RecordedTrimGroup(
        String kind, String name, long flights, double meanUnits, OptionalDouble sdUnits, long noseUp, long noseDown) {

    /** The kind of the groups by tail. */
    public static final String TAIL = "tail";

    /** Share of flights farther off than the policy tolerates, from 0 to 1. */
    public double shareBeyond() {
        return (noseUp + noseDown) / (double) flights;
    }
}
