package org.steelyard.config.value;

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
public record WrittenNumber(String noun, String example, Map<String, BigDecimal> factors, Room room)
        implements Accepts<Double> {

    /** Which numbers make sense. */
    enum Room {
        ANY,
        NOT_NEGATIVE,
        POSITIVE;

        void require(double value, String expected) throws NotAcceptedException {
            if (!Double.isFinite(value)) {
                throw new NotAcceptedException("too large a number", expected);
            }
            if (this == POSITIVE && value <= 0) {
                throw new NotAcceptedException("must be more than zero", expected);
            }
            if (this == NOT_NEGATIVE && value < 0) {
                throw new NotAcceptedException("must not be negative", expected);
            }
        }
    }

    private static final Pattern NUMBER = Pattern.compile("-?(0|[1-9][0-9]*)(\\.[0-9]+)?");
    private static final Pattern PARTS = Pattern.compile("([^\\s\\p{L}%°]*)\\s*(.*)", Pattern.DOTALL);

    /** An arm: may lie ahead of the datum. */
    public static final WrittenNumber ARM = new WrittenNumber("an arm", "12.4 m", FileUnits.LENGTHS, Room.ANY);

    public static final WrittenNumber LENGTH = new WrittenNumber("a length", "3.2 m", FileUnits.LENGTHS, Room.POSITIVE);
    public static final WrittenNumber LENGTH_OR_NONE =
            new WrittenNumber("a length", "0.3 m", FileUnits.LENGTHS, Room.NOT_NEGATIVE);
    public static final WrittenNumber MASS = new WrittenNumber("a mass", "18500 kg", FileUnits.MASSES, Room.POSITIVE);
    public static final WrittenNumber MASS_OR_NONE =
            new WrittenNumber("a mass", "120 kg", FileUnits.MASSES, Room.NOT_NEGATIVE);
    public static final WrittenNumber MOMENT =
            new WrittenNumber("a moment", "1000 kg m", FileUnits.MOMENTS, Room.POSITIVE);
    public static final WrittenNumber MOMENT_OR_NONE =
            new WrittenNumber("a moment", "1000 kg m", FileUnits.MOMENTS, Room.NOT_NEGATIVE);
    public static final WrittenNumber DENSITY =
            new WrittenNumber("a density", "0.79 kg/L", FileUnits.DENSITIES, Room.POSITIVE);
    public static final WrittenNumber RUNNING =
            new WrittenNumber("a running load", "650 kg/m", FileUnits.RUNNING_LOADS, Room.POSITIVE);
    public static final WrittenNumber AREA =
            new WrittenNumber("an area load", "700 kg/m2", FileUnits.AREA_LOADS, Room.POSITIVE);
    public static final WrittenNumber PERCENT = bare("a percentage", "2 %", "%", Room.NOT_NEGATIVE);
    public static final WrittenNumber PERCENT_MAC =
            bare("a distance on the chord", "0.5 % MAC", "% MAC", Room.NOT_NEGATIVE);
    public static final WrittenNumber TRIM = bare("an amount of trim", "0.2 units", "units", Room.NOT_NEGATIVE);

    public static final WrittenNumber SURFACE =
            new WrittenNumber("an area", "120 m2", FileUnits.SURFACES, Room.POSITIVE);
    public static final WrittenNumber ANGLE = new WrittenNumber("an angle", "-2 deg", FileUnits.ANGLES, Room.ANY);
    public static final WrittenNumber ANGLE_NOT_NEGATIVE =
            new WrittenNumber("an angle", "1.5 deg", FileUnits.ANGLES, Room.NOT_NEGATIVE);
    public static final WrittenNumber LIFT_SLOPE =
            new WrittenNumber("a lift-curve slope", "5.2 per rad", FileUnits.LIFT_SLOPES, Room.POSITIVE);
    public static final WrittenNumber FORCE =
            new WrittenNumber("a force", "180 kN", FileUnits.FORCES, Room.NOT_NEGATIVE);
    public static final WrittenNumber SPEED = new WrittenNumber("a speed", "145 kt", FileUnits.SPEEDS, Room.POSITIVE);

    private static WrittenNumber bare(String noun, String example, String unit, Room room) {
        return new WrittenNumber(noun, example, Map.of(unit, BigDecimal.ONE), room);
    }

    /** Fuel in a tank: a mass, or a volume that the density makes one. */
    public static WrittenNumber fuel(double densityKgPerL) {
        return new WrittenNumber(
                "a mass or volume of fuel", "45 US gal", FileUnits.fuels(densityKgPerL), Room.POSITIVE);
    }

    /** A number without a unit. */
    public static double number(String text) throws NotAcceptedException {
        if (!isNumber(text)) {
            throw new NotAcceptedException("not a number", "a number with a decimal point, as '-0.2'");
        }
        double number = Double.parseDouble(text);
        Room.ANY.require(number, "a number, as '-0.2'");
        return number;
    }

    /** A number above zero without a unit. */
    public static double positiveNumber(String text) throws NotAcceptedException {
        double number = number(text);
        Room.POSITIVE.require(number, "a number, as '0.1'");
        return number;
    }

    /** A whole number from a least one on. */
    public static Accepts<Integer> count(int least) {
        return text -> {
            if (!text.matches("0|[1-9][0-9]{0,5}") || Integer.parseInt(text) < least) {
                throw new NotAcceptedException("not a count", "a whole number from " + least + " on, as '4'");
            }
            return Integer.parseInt(text);
        };
    }

    @Override
    public Double read(String text) throws NotAcceptedException {
        Matcher parts = PARTS.matcher(text);
        if (!parts.matches() || !isNumber(parts.group(1))) {
            throw new NotAcceptedException("not a number with a unit", expected());
        }
        String unit = parts.group(2);
        BigDecimal factor = factors.get(unit);
        if (factor == null) {
            throw new NotAcceptedException(
                    unit.isEmpty() ? "the unit is missing" : "unknown unit '" + unit + "'", expected());
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
