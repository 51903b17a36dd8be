package org.steelyard.config;

import java.math.BigDecimal;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number that is written with its unit, as {@code 18500 kg}. It is converted in decimal, so that {@code 62.7 t} is
 * exactly the double of {@code 62700 kg}. Numbers are plain decimals: no exponent, no separator of thousands, no
 * leading zero, no word.
 *
 * @param noun what is measured, with its article
 * @param example how it is written
 * @param factors accepted units, each with its factor to the unit used inside
 * @param room which numbers make sense
 */
record Measure(String noun, String example, Map<String, BigDecimal> factors, Room room) implements Accepts<Double> {

    /** Which numbers make sense. */
    enum Room {
        ANY,
        NOT_NEGATIVE,
        POSITIVE;

        void require(double value, String expected) throws Unfit {
            if (!Double.isFinite(value)) {
                throw new Unfit("too large a number", expected);
            }
            if (this == POSITIVE && value <= 0) {
                throw new Unfit("must be more than zero", expected);
            }
            if (this == NOT_NEGATIVE && value < 0) {
                throw new Unfit("must not be negative", expected);
            }
        }
    }

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?");
    private static final Pattern PARTS = Pattern.compile("([^\\s\\p{L}%°]*)\\s*(.*)", Pattern.DOTALL);

    /** An arm: may lie ahead of the datum. */
    static final Measure ARM = new Measure("an arm", "12.4 m", Units.LENGTHS, Room.ANY);

    static final Measure LENGTH = new Measure("a length", "3.2 m", Units.LENGTHS, Room.POSITIVE);
    static final Measure LENGTH_OR_NONE = new Measure("a length", "0.3 m", Units.LENGTHS, Room.NOT_NEGATIVE);
    static final Measure MASS = new Measure("a mass", "18500 kg", Units.MASSES, Room.POSITIVE);
    static final Measure MASS_OR_NONE = new Measure("a mass", "120 kg", Units.MASSES, Room.NOT_NEGATIVE);
    static final Measure MOMENT = new Measure("a moment", "1000 kg m", Units.MOMENTS, Room.POSITIVE);
    static final Measure MOMENT_OR_NONE = new Measure("a moment", "1000 kg m", Units.MOMENTS, Room.NOT_NEGATIVE);
    static final Measure DENSITY = new Measure("a density", "0.79 kg/L", Units.DENSITIES, Room.POSITIVE);
    static final Measure RUNNING = new Measure("a running load", "650 kg/m", Units.RUNNING_LOADS, Room.POSITIVE);
    static final Measure AREA = new Measure("an area load", "700 kg/m2", Units.AREA_LOADS, Room.POSITIVE);
    static final Measure PERCENT = bare("a percentage", "2 %", "%", Room.NOT_NEGATIVE);
    static final Measure PERCENT_MAC = bare("a distance on the chord", "0.5 % MAC", "% MAC", Room.NOT_NEGATIVE);
    static final Measure TRIM = bare("an amount of trim", "0.2 units", "units", Room.NOT_NEGATIVE);

    static final Measure SURFACE = new Measure("an area", "120 m2", Units.SURFACES, Room.POSITIVE);
    static final Measure ANGLE = new Measure("an angle", "-2 deg", Units.ANGLES, Room.ANY);
    static final Measure ANGLE_NOT_NEGATIVE = new Measure("an angle", "1.5 deg", Units.ANGLES, Room.NOT_NEGATIVE);
    static final Measure LIFT_SLOPE =
            new Measure("a lift-curve slope", "5.2 per rad", Units.LIFT_SLOPES, Room.POSITIVE);
    static final Measure FORCE = new Measure("a force", "180 kN", Units.FORCES, Room.NOT_NEGATIVE);
    static final Measure SPEED = new Measure("a speed", "145 kt", Units.SPEEDS, Room.POSITIVE);

    private static Measure bare(String noun, String example, String unit, Room room) {
        return new Measure(noun, example, Map.of(unit, BigDecimal.ONE), room);
    }

    /** Fuel in a tank: a mass, or a volume that the density makes one. */
    static Measure fuel(double densityKgPerL) {
        return new Measure("a mass or volume of fuel", "45 US gal", Units.fuels(densityKgPerL), Room.POSITIVE);
    }

    /** A number without a unit. */
    static double number(String text) throws Unfit {
        if (!isNumber(text)) {
            throw new Unfit("not a number", "a number with a decimal point, as '-0.2'");
        }
        double number = Double.parseDouble(text);
        Room.ANY.require(number, "a number, as '-0.2'");
        return number;
    }

    /** A number above zero without a unit. */
    static double positiveNumber(String text) throws Unfit {
        double number = number(text);
        Room.POSITIVE.require(number, "a number, as '0.1'");
        return number;
    }

    /** A whole number from a least one on. */
    static Accepts<Integer> count(int least) {
        return text -> {
            if (!text.matches("0|[1-9][0-9]{0,5}") || Integer.parseInt(text) < least) {
                throw new Unfit("not a count", "a whole number from " + least + " on, as '4'");
            }
            return Integer.parseInt(text);
        };
    }

    @Override
    public Double read(String text) throws Unfit {
        Matcher parts = PARTS.matcher(text);
        if (!parts.matches() || !isNumber(parts.group(1))) {
            throw new Unfit("not a number with a unit", expected());
        }
        String unit = parts.group(2);
        BigDecimal factor = factors.get(unit);
        if (factor == null) {
            throw new Unfit(unit.isEmpty() ? "the unit is missing" : "unknown unit '" + unit + "'", expected());
        }
        double value = new BigDecimal(parts.group(1)).multiply(factor).doubleValue();
        room.require(value, expected());
        return value;
    }

    private static boolean isNumber(String text) {
        return NUMBER.matcher(text).matches();
    }

    private String expected() {
        return noun + " in " + Words.or(factors.keySet()) + ", as '" + example + "'";
    }
}
