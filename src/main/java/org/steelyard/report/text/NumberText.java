package org.steelyard.report.text;

import org.steelyard.check.text.FixedDecimals;

/** Numbers as people read them on a page. */
public final class NumberText {

    private NumberText() {}

    /** A number with so many decimals and its thousands set apart, with a true minus sign. */
    public static String fixed(double number, int decimals) {
        return PlainNumber.grouped(number, decimals).replace('-', '−');
    }

    /** A share in percent that never says 0 for something or 100 for less than all. */
    public static String share(long part, long whole) {
        if (whole == 0 || part == 0) {
            return "0 %";
        }
        if (part == whole) {
            return "100 %";
        }
        double percent = 100.0 * part / whole;
        if (percent < 0.1) {
            return "under 0.1 %";
        }
        return percent > 99.9 ? "over 99.9 %" : fixed(percent, 1) + " %";
    }

    /** A chance as people write it. */
    public static String chance(double chance) {
        return chance < 0.001 ? "< 0.001" : FixedDecimals.of(chance, 3);
    }
}
