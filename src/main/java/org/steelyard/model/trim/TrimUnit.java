package org.steelyard.model.trim;

import java.util.Objects;
import org.steelyard.model.unit.Quantity;

/**
 * What the numbers of a trim scale are, and how they stand on it.
 *
 * @param measure units of the indicator, or degrees
 * @param numbering how a setting is written
 */
public record TrimUnit(Measure measure, Numbering numbering) {

    /** Units of the type's trim indicator, written with UP and DN. */
    public static final TrimUnit UNITS = new TrimUnit(Measure.UNITS, Numbering.UP_DN);

    /** Degrees of stabilizer angle, written with UP and DN. */
    public static final TrimUnit DEGREES = new TrimUnit(Measure.DEGREES, Numbering.UP_DN);

    public TrimUnit {
        Objects.requireNonNull(measure);
        Objects.requireNonNull(numbering);
    }

    /** What the numbers measure. */
    public enum Measure {
        /** Units of the type's trim indicator. */
        UNITS("units", ""),
        /** Degrees of stabilizer angle. */
        DEGREES("degrees", "°");

        private final String label;
        private final String symbol;

        Measure(String label, String symbol) {
            this.label = label;
            this.symbol = symbol;
        }

        /**
         * How it is called in type files and on outputs.
         *
         * @return its name in words
         */
        public String label() {
            return label;
        }
    }

    /** How a setting is written. */
    public enum Numbering {
        /** From a neutral 0 both ways, as {@code 0.2 UP} and {@code 1.1 DN}. */
        UP_DN(1),
        /** Plain numbers from 0 or above, as {@code 6.0}; more is more nose-up. */
        PLAIN(1),
        /** Plain numbers from 0 or above; more is more nose-down. */
        PLAIN_NOSE_DOWN(-1);

        private final int sign;

        Numbering(int sign) {
            this.sign = sign;
        }

        /**
         * Whether numbers stand alone, without UP or DN.
         *
         * @return true for both plain ones
         */
        public boolean isPlain() {
            return this != UP_DN;
        }

        /**
         * Between a number of the scale and one that is nose-up positive; the way is the same in both directions.
         *
         * @param number either of them
         * @return the other
         */
        public double turned(double number) {
            return sign < 0 ? 0.0 - number : number;
        }
    }

    /**
     * What follows a number.
     *
     * @return the degree sign, or nothing for units
     */
    public String symbol() {
        return measure.symbol;
    }

    /**
     * What trims of the scale are as a finding's figures.
     *
     * @return trim in units or in degrees
     */
    public Quantity quantity() {
        return measure == Measure.UNITS ? Quantity.TRIM : Quantity.TRIM_DEGREES;
    }
}
