package org.steelyard.trim;

import java.math.BigDecimal;
import java.math.MathContext;

/** A figure in a message: six digits that count, and none that are only rounding. */
final class Figure {

    private static final MathContext DIGITS = new MathContext(6);

    private Figure() {}

    static String of(double figure) {
        return new BigDecimal(figure).round(DIGITS).stripTrailingZeros().toPlainString();
    }
}
