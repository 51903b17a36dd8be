package org.steelyard.model.type;

import java.util.List;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.model.unit.Require;

/**
 * The record of one weighing, from which a tail's basic mass and centre of gravity follow: {@code mass = sum (reading -
 * tare) + sum corrections}, and the moments likewise, each net reading times the arm of its point; the CG is the
 * quotient (FAA-H-8083-1, chapter 3). With the points' distances from the plane of symmetry in place of their arms,
 * right positive, the same sum gives the lateral CG.
 *
 * @param readings at least two scales
 * @param corrections what was missing on the scales, as mass with moment, and with negative mass what was aboard but
 *     does not belong to the basic state: usable fuel, for example
 */
public record WeighingRecord(List<ScaleReading> readings, List<MassMoment> corrections) {

    /**
     * Checks the readings.
     *
     * @throws IllegalArgumentException if there are fewer than two scales or nothing is left on them
     */
    public WeighingRecord {
        readings = List.copyOf(readings);
        corrections = List.copyOf(corrections);
        Require.that(readings.size() >= 2, "a weighing needs at least two scales, not " + readings.size());
        Require.positive("basic massKg", sum(readings, corrections).massKg());
    }

    private static MassMoment sum(List<ScaleReading> readings, List<MassMoment> corrections) {
        MassMoment sum = MassMoment.ZERO;
        for (ScaleReading reading : readings) {
            sum = sum.plus(reading.net());
        }
        for (MassMoment correction : corrections) {
            sum = sum.plus(correction);
        }
        return sum;
    }

    /**
     * The aircraft as it stands in the fleet.
     *
     * @return basic mass, more than zero, with its moment
     */
    public MassMoment basic() {
        return sum(readings, corrections);
    }
}
