package org.steelyard.demo;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A recorded trim setting as each file writes it. */
final class TrimCell {

    private TrimCell() {}

    /** A signed number, nose-up positive; in the ledger words. */
    static Cell of(double trimUnits, Style style) {
        if (style != Style.LEDGER) {
            return new Cell.Amount(trimUnits, 1);
        }
        BigDecimal digits = BigDecimal.valueOf(Math.abs(trimUnits)).setScale(1, RoundingMode.HALF_UP);
        return new Cell.Text(digits.toPlainString() + (digits.signum() == 0 ? "" : trimUnits > 0 ? " UP" : " DN"));
    }
}
