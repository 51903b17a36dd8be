package org.steelyard.report.text;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import org.steelyard.check.text.FixedDecimals;

/**
 * Numbers at full precision as plain decimals: the fewest digits that read back as the same double, without exponent
 * and without zeros at the end of the decimals. Not {@link Double#toString(double)}, which before Java 19 sometimes
 * writes more digits than needed, so that bytes would depend on the version of Java.
 */
public final class PlainNumber {

    private static final int DIGITS = 64;
    private static final int GROUP = 3;

    private PlainNumber() {}

    /** A number given as a whole number of tenths, hundredths and so on. */
    public static String of(long scaled, int decimals) {
        return new String(new ByteText(DIGITS).decimal(scaled, decimals).take(), StandardCharsets.ISO_8859_1);
    }

    /** A number to so many decimals, its thousands set apart by commas; what is rounded to nothing has no sign. */
    public static String grouped(double value, int decimals) {
        String plain = FixedDecimals.of(value, decimals);
        if (!Double.isFinite(value)) {
            return plain;
        }
        boolean zero = plain.chars().noneMatch(c -> c >= '1' && c <= '9');
        StringBuilder grouped = new StringBuilder(zero ? plain.replace("-", "") : plain);
        int first = grouped.charAt(0) == '-' ? 1 : 0;
        int point = decimals > 0 ? grouped.length() - decimals - 1 : grouped.length();
        for (int at = point - GROUP; at > first; at -= GROUP) {
            grouped.insert(at, ',');
        }
        return grouped.toString();
    }

    public static String of(double value) {
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
