package org.steelyard.validation;

import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.VolumeUnit;

/**
 * What a figure of a case measures. The unit stands at the end of the figure's name: {@code cgIn},
 * {@code totalMoment1000LbIn}. A force in N may stand for a mass, since the law of the lever is the same.
 */
enum Dimension {
    MASS("(?<mass>Kg|Lb|T|N)"),
    LENGTH("(?<length>M|Cm|Mm|In|Ft)"),
    MOMENT("(?<scale>\\d*)(?<mass>Kg|Lb|N)(?<length>M|Cm|Mm|In|Ft)"),
    VOLUME("(?<volume>L|UsGal|ImpGal)"),
    DENSITY("(?<mass>Kg|Lb)Per(?<volume>L|UsGal)"),
    RUNNING_LOAD("(?<mass>Kg|Lb)Per(?<length>M|Ft|In)"),
    AREA_LOAD("(?<mass>Kg|Lb)Per(?<length>M|Ft)2");

    private final Pattern pattern;

    Dimension(String pattern) {
        this.pattern = Pattern.compile(pattern);
    }

    /** What one of the unit is in kg, m, kg·m, L, kg/L, kg/m or kg/m²; empty if it is no unit of this dimension. */
    OptionalDouble inside(String unit) {
        Matcher matcher = pattern.matcher(unit);
        return matcher.matches() ? OptionalDouble.of(factor(matcher)) : OptionalDouble.empty();
    }

    private double factor(Matcher m) {
        return switch (this) {
            case MASS -> massKg(m.group("mass"));
            case LENGTH -> lengthM(m.group("length"));
            case MOMENT -> scale(m.group("scale")) * massKg(m.group("mass")) * lengthM(m.group("length"));
            case VOLUME -> volumeL(m.group("volume"));
            case DENSITY -> massKg(m.group("mass")) / volumeL(m.group("volume"));
            case RUNNING_LOAD -> massKg(m.group("mass")) / lengthM(m.group("length"));
            case AREA_LOAD -> massKg(m.group("mass")) / Math.pow(lengthM(m.group("length")), 2);
        };
    }

    private static double scale(String digits) {
        return digits.isEmpty() ? 1 : Double.parseDouble(digits);
    }

    private static double massKg(String unit) {
        return switch (unit) {
            case "Kg" -> MassUnit.KG.toKg(1);
            case "Lb" -> MassUnit.LB.toKg(1);
            case "T" -> MassUnit.TONNE.toKg(1);
            default -> 1;
        };
    }

    private static double lengthM(String unit) {
        return switch (unit) {
            case "Cm" -> LengthUnit.CM.toM(1);
            case "Mm" -> LengthUnit.MM.toM(1);
            case "In" -> LengthUnit.IN.toM(1);
            case "Ft" -> LengthUnit.FT.toM(1);
            default -> LengthUnit.M.toM(1);
        };
    }

    static VolumeUnit volumeUnit(String unit) {
        return switch (unit) {
            case "UsGal" -> VolumeUnit.US_GAL;
            case "ImpGal" -> VolumeUnit.IMP_GAL;
            default -> VolumeUnit.L;
        };
    }

    private static double volumeL(String unit) {
        return volumeUnit(unit).toL(1);
    }
}
