package org.steelyard.model.type;

import org.steelyard.model.unit.Require;

/**
 * The mean aerodynamic chord (MAC) as a ruler for the centre of gravity: 0 % is its leading edge (LEMAC), 100 % its
 * trailing edge. {@code percent = 100 (arm - leadingEdge) / length} (FAA-H-8083-1, chapter 3).
 *
 * @param leadingEdgeM arm of the leading edge (LEMAC) in m from the datum, aft positive
 * @param lengthM length of the chord (MAC) in m, more than zero
 */
public record MeanChord(double leadingEdgeM, double lengthM) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the length is not more than zero or a number is not finite
     */
    public MeanChord {
        Require.finite("leadingEdgeM", leadingEdgeM);
        Require.positive("lengthM", lengthM);
    }

    /**
     * The chord that two known positions imply: leading and trailing edge, or two limits given both ways.
     *
     * @param oneM arm of one in m from the datum
     * @param onePercentMac its position in % MAC
     * @param otherM arm of the other in m from the datum
     * @param otherPercentMac its position in % MAC
     * @return the chord on which both lie where they should
     * @throws IllegalArgumentException if no chord of positive length does that
     */
    public static MeanChord through(double oneM, double onePercentMac, double otherM, double otherPercentMac) {
        double lengthM = 100 * (otherM - oneM) / (otherPercentMac - onePercentMac);
        return new MeanChord(oneM - lengthM * onePercentMac / 100, lengthM);
    }

    /**
     * Arm to position on the chord.
     *
     * @param armM arm in m from the datum, aft positive
     * @return % MAC; below 0 ahead of the chord, above 100 behind it
     */
    public double percentAt(double armM) {
        return 100 * (armM - leadingEdgeM) / lengthM;
    }

    /**
     * Position on the chord to arm.
     *
     * @param cgPercentMac position in % MAC
     * @return arm in m from the datum, aft positive
     */
    public double armAt(double cgPercentMac) {
        return leadingEdgeM + lengthM * cgPercentMac / 100;
    }
}
