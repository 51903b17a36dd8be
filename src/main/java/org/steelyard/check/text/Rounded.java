package org.steelyard.check.text;

/**
 * Amounts with a fixed count of decimals for whoever acts on them: what is permitted is rounded down and what is needed
 * is rounded up, so that nobody who goes by the shown figure leaves a limit. A figure that is whole but for rounding
 * stays as it is.
 */
public final class Rounded {

    /** A share of the last decimal shown: far above the rounding of sums, far below what anybody weighs. */
    private static final double WHOLE = 1e-5;

    private Rounded() {}

    /**
     * What is permitted, rounded down.
     *
     * @param amount in any unit; where less than nothing is permitted, so much has to go at least
     * @param decimals how many digits after the point, not negative
     * @return the greatest figure with so many decimals that is not above it
     */
    public static double down(double amount, int decimals) {
        double grains = Math.pow(10, decimals);
        return Math.floor(amount * grains + WHOLE) / grains + 0.0;
    }

    /**
     * What is needed, rounded up.
     *
     * @param amount in any unit
     * @param decimals how many digits after the point, not negative
     * @return the least figure with so many decimals that is not below it
     */
    public static double up(double amount, int decimals) {
        double grains = Math.pow(10, decimals);
        return Math.ceil(amount * grains - WHOLE) / grains + 0.0;
    }

    /**
     * What is permitted, as a text.
     *
     * @param amount in any unit
     * @param decimals how many digits after the point, not negative
     * @return {@link #down} in plain digits
     */
    public static String downTo(double amount, int decimals) {
        return FixedDecimals.of(down(amount, decimals), decimals);
    }

    /**
     * What is needed, as a text.
     *
     * @param amount in any unit
     * @param decimals how many digits after the point, not negative
     * @return {@link #up} in plain digits
     */
    public static String upTo(double amount, int decimals) {
        return FixedDecimals.of(up(amount, decimals), decimals);
    }
}
