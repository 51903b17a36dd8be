package org.steelyard.check.chance;

/**
 * The normal distribution: {@code Φ(z) = ½ + φ(z) (z + z³/3 + z⁵/(3·5) + …)} near the middle, and by the continued
 * fraction {@code 1 - Φ(z) = φ(z) / (z + 1/(z + 2/(z + 3/(z + …))))} in the tails (Abramowitz and Stegun 26.2.11 and
 * 26.2.14).
 */
public final class NormalChance {

    private static final double ROOT_TWO_PI = Math.sqrt(2 * Math.PI);
    private static final double TAIL_FROM = 3.2;
    private static final double NOTHING_FROM = 38;
    private static final int DEPTH = 60;

    /** From each of these on so many terms give the same double as the full depth. */
    private static final double[] FAR_OUT = {15, 10, 8, 6};

    private static final int[] SHALLOW = {14, 18, 20, 40};

    /** So far off a chance is under 10⁻¹⁵, and nobody is shown less than 10⁻¹². */
    private static final double NOTHING_TOLD_FROM = 8;

    private NormalChance() {}

    /**
     * The chance of being outside a limit, told as 0 where it is less than anybody is shown: so it is with most limits
     * of most flights, and they cost nothing.
     *
     * @param roomSds room to the limit in standard deviations, negative outside
     * @return from 0 to 1
     */
    public static double outside(double roomSds) {
        return roomSds > NOTHING_TOLD_FROM ? 0 : below(-roomSds);
    }

    /**
     * The chance that a standard normal value is below.
     *
     * @param z any number
     * @return from 0 to 1, to some 14 digits, in the lower tail too
     */
    static double below(double z) {
        if (Math.abs(z) > NOTHING_FROM) {
            return z > 0 ? 1 : 0;
        }
        if (Math.abs(z) >= TAIL_FROM) {
            double tail = density(z) / fraction(Math.abs(z));
            return z > 0 ? 1 - tail : tail;
        }
        double term = z;
        double sum = z;
        for (int k = 3; Math.abs(term) > 1e-17 * Math.abs(sum) && k < 400; k += 2) {
            term *= z * z / k;
            sum += term;
        }
        return 0.5 + density(z) * sum;
    }

    private static double density(double z) {
        return StrictMath.exp(-z * z / 2) / ROOT_TWO_PI;
    }

    private static double fraction(double z) {
        double fraction = z;
        for (int k = depth(z); k >= 1; k--) {
            fraction = z + k / fraction;
        }
        return fraction;
    }

    private static int depth(double z) {
        for (int i = 0; i < FAR_OUT.length; i++) {
            if (z > FAR_OUT[i]) {
                return SHALLOW[i];
            }
        }
        return DEPTH;
    }
}
