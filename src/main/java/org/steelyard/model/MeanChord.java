package org.steelyard.model;

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
