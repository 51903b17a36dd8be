package org.steelyard.model.unit;

/**
 * A mass together with its moment about the type's datum. Sums of loads are sums of these; the arm is the one division,
 * taken at the end: {@code armM = momentKgM / massKg} (the law of the lever; FAA-H-8083-1, chapter 2).
 *
 * @param massKg mass in kg, finite; negative only for a load taken off
 * @param momentKgM moment in kg·m about the datum, aft positive, finite
 */
public record MassMoment(double massKg, double momentKgM) {

    /** No mass and no moment. */
    public static final MassMoment ZERO = new MassMoment(0, 0);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a number is not finite
     */
    public MassMoment {
        Require.finite("massKg", massKg);
        Require.finite("momentKgM", momentKgM);
    }

    /**
     * A mass at an arm.
     *
     * @param massKg mass in kg
     * @param armM arm from the datum in m, aft positive
     * @return the mass with its moment
     */
    public static MassMoment at(double massKg, double armM) {
        return new MassMoment(massKg, massKg * armM);
    }

    /**
     * Both together.
     *
     * @param other what comes aboard
     * @return the sum of masses and of moments
     */
    public MassMoment plus(MassMoment other) {
        return new MassMoment(massKg + other.massKg, momentKgM + other.momentKgM);
    }

    /**
     * What is left.
     *
     * @param other what goes off
     * @return the difference of masses and of moments
     */
    public MassMoment minus(MassMoment other) {
        return new MassMoment(massKg - other.massKg, momentKgM - other.momentKgM);
    }

    /**
     * The arm of the centre of gravity.
     *
     * @return moment divided by mass, in m from the datum, aft positive
     * @throws ArithmeticException if the mass is zero, which has no centre of gravity
     */
    public double armM() {
        if (massKg == 0) {
            throw new ArithmeticException("a mass of zero has no centre of gravity");
        }
        return momentKgM / massKg;
    }
}
