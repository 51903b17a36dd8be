package org.steelyard.model.trim;

/**
 * Lift-curve slopes and downwash of plain lifting surfaces, for data that nobody has measured.
 *
 * <p>{@code a = 2 π A / (2 + sqrt(4 + A² β² (1 + tan²Λ / β²)))}, with aspect ratio A, sweep Λ of the line of greatest
 * thickness (near the quarter chord) and {@code β² = 1 - M²} (D. P. Raymer, Aircraft Design, equation 12.6, with a
 * section of slope 2 π). Downwash far behind a wing of elliptic lift: {@code ε' = 2 a / (π A)} (Anderson, Introduction
 * to Flight; Etkin and Reid; from memory). Valid below the speed of drag rise and for aspect ratios above 3 or so.
 */
public final class LiftSlope {

    private LiftSlope() {}

    /**
     * The lift-curve slope of a surface.
     *
     * @param aspectRatio span² over area, more than zero
     * @param sweepRad sweep in rad, less than a quarter turn
     * @param mach Mach number, from 0 to less than 1
     * @return slope per rad, referred to the surface's own area
     */
    public static double perRad(double aspectRatio, double sweepRad, double mach) {
        double beta2 = 1 - mach * mach;
        double tangent = Math.tan(sweepRad);
        double root = Math.sqrt(4 + aspectRatio * aspectRatio * beta2 * (1 + tangent * tangent / beta2));
        return 2 * Math.PI * aspectRatio / (2 + root);
    }

    /**
     * How fast downwash far behind a wing grows with its angle of attack.
     *
     * @param wingSlopePerRad lift-curve slope of the wing per rad
     * @param aspectRatio aspect ratio of the wing, more than zero
     * @return change of downwash for one of angle of attack
     */
    public static double downwashSlope(double wingSlopePerRad, double aspectRatio) {
        return 2 * wingSlopePerRad / (Math.PI * aspectRatio);
    }
}
