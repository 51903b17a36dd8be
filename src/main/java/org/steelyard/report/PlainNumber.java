package org.steelyard.report;

import com.fasterxml.jackson.core.io.NumberOutput;
import java.math.BigDecimal;

/**
 * Numbers at full precision as plain decimals: the fewest digits that read back as the same double, without exponent
 * and without a trailing {@code .0}. Not {@link Double#toString(double)}, which before Java 19 sometimes writes more
 * digits than needed, so that bytes would depend on the version of Java.
 */
final class PlainNumber {

    private PlainNumber() {}

    static String of(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e15) {
            return Long.toString((long) value);
        }
        String shortest = NumberOutput.toString(value, true);
        if (shortest.indexOf('E') < 0) {
            return shortest;
        }
        return new BigDecimal(shortest).toPlainString();
    }
}
