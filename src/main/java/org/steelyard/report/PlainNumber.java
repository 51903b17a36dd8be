package org.steelyard.report;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;

/**
 * Numbers at full precision as plain decimals: the fewest digits that read back as the same double, without exponent
 * and without zeros at the end of the decimals. Not {@link Double#toString(double)}, which before Java 19 sometimes
 * writes more digits than needed, so that bytes would depend on the version of Java.
 */
final class PlainNumber {

    private static final int DIGITS = 64;

    private PlainNumber() {}

    /** A number given as a whole number of tenths, hundredths and so on. */
    static String of(long scaled, int decimals) {
        return new String(new ByteText(DIGITS).decimal(scaled, decimals).take(), StandardCharsets.ISO_8859_1);
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
