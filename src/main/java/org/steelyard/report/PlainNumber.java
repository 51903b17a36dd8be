package org.steelyard.report;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;

/**
 * Numbers at full precision as plain decimals: the fewest digits that read back as the same double, without exponent
 * and without zeros at the end of the decimals. Not {@link Double#toString(double)}, which before Java 19 sometimes
 * writes more digits than needed, so that bytes would depend on the version of Java.
 */
final class PlainNumber {

    private static final int DIGITS = 64;
    private static final int GROUP = 3;

    private PlainNumber() {}

    /** A number given as a whole number of tenths, hundredths and so on. */
    static String of(long scaled, int decimals) {
        return new String(new ByteText(DIGITS).decimal(scaled, decimals).take(), StandardCharsets.ISO_8859_1);
    }

    /**
     * A number to so many decimals, half of the last away from zero, its thousands set apart by commas. As the
     * library's format has it, but that needs a locale's signs, which take 12 ms at the start of the program.
     */
    static String grouped(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        String plain = new BigDecimal(of(value))
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString();
        StringBuilder grouped = new StringBuilder(plain);
        int first = plain.startsWith("-") ? 1 : 0;
        int point = decimals > 0 ? plain.length() - decimals - 1 : plain.length();
        for (int at = point - GROUP; at > first; at -= GROUP) {
            grouped.insert(at, ',');
        }
        return grouped.toString();
    }

    static String of(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        String shortest = NumberOutput.toString(value, true);
        if (shortest.indexOf('E') < 0) {
            return shortest;
        }
        return new BigDecimal(shortest).stripTrailingZeros().toPlainString();
    }
}
