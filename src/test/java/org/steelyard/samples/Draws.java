package org.steelyard.samples;

/** How many cases tests draw: fewer where the same tests run many times over, as under mutation testing. */
public final class Draws {

    private static final int PERCENT = Integer.getInteger("steelyard.drawsPercent", 100);

    private Draws() {}

    /** A share of the usual number, at least one. */
    public static int of(int usual) {
        return Math.max(1, usual * PERCENT / 100);
    }
}
