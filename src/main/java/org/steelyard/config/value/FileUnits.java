package org.steelyard.config.value;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.steelyard.model.unit.LengthUnit;
import org.steelyard.model.unit.MassUnit;
import org.steelyard.model.unit.VolumeUnit;

/**
 * The units that the files may be written in, each with its factor to kg, m, kg/L, kg/m, kg/m² or kg·m. The model's
 * factors are short decimals, so they are exact here.
 */
final class FileUnits {

    static final Map<String, BigDecimal> MASSES = masses();
    static final Map<String, BigDecimal> LENGTHS = lengths();
    static final Map<String, BigDecimal> MOMENTS =
            inOrder("kg m", BigDecimal.ONE, "lb in", kg(MassUnit.LB).multiply(m(LengthUnit.IN)));
    static final Map<String, BigDecimal> DENSITIES =
            inOrder("kg/L", BigDecimal.ONE, "lb/US gal", per(MassUnit.LB, exact(VolumeUnit.US_GAL.toL(1))));
    static final Map<String, BigDecimal> RUNNING_LOADS =
            inOrder("kg/m", BigDecimal.ONE, "lb/ft", per(MassUnit.LB, m(LengthUnit.FT)));
    static final Map<String, BigDecimal> AREA_LOADS = inOrder(
            "kg/m2", BigDecimal.ONE, "lb/ft2", per(MassUnit.LB, m(LengthUnit.FT).pow(2)));

    static final Map<String, BigDecimal> SURFACES =
            inOrder("m2", BigDecimal.ONE, "ft2", m(LengthUnit.FT).pow(2));
    static final Map<String, BigDecimal> ANGLES = inOrder("deg", exact(Math.PI / 180), "rad", BigDecimal.ONE);
    static final Map<String, BigDecimal> LIFT_SLOPES =
            inOrder("per rad", BigDecimal.ONE, "per deg", exact(180 / Math.PI));
    /** 1 kt = 1852 m / 3600 s. */
    static final Map<String, BigDecimal> SPEEDS = inOrder(
            "kt", new BigDecimal(1852).divide(new BigDecimal(3600), MathContext.DECIMAL128), "m/s", BigDecimal.ONE);

    static final Map<String, BigDecimal> FORCES = forces();

    private FileUnits() {}

    /** Masses, and volumes of a density. */
    static Map<String, BigDecimal> fuels(double densityKgPerL) {
        Map<String, BigDecimal> factors = new LinkedHashMap<>(MASSES);
        for (VolumeUnit unit : VolumeUnit.values()) {
            factors.put(unit.symbol(), exact(unit.toL(1)).multiply(exact(densityKgPerL)));
        }
        return factors;
    }

    private static Map<String, BigDecimal> masses() {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        for (MassUnit unit : MassUnit.values()) {
            factors.put(unit.symbol(), kg(unit));
        }
        return Collections.unmodifiableMap(factors);
    }

    /** 1 lbf = 0.45359237 kg × 9.80665 m/s². */
    private static Map<String, BigDecimal> forces() {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        factors.put("N", BigDecimal.ONE);
        factors.put("kN", new BigDecimal(1000));
        factors.put("lbf", kg(MassUnit.LB).multiply(new BigDecimal("9.80665")));
        return Collections.unmodifiableMap(factors);
    }

    private static Map<String, BigDecimal> lengths() {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        for (LengthUnit unit : LengthUnit.values()) {
            factors.put(unit.symbol(), m(unit));
        }
        return Collections.unmodifiableMap(factors);
    }

    private static Map<String, BigDecimal> inOrder(String one, BigDecimal factor, String other, BigDecimal factor2) {
        Map<String, BigDecimal> factors = new LinkedHashMap<>();
        factors.put(one, factor);
        factors.put(other, factor2);
        return Collections.unmodifiableMap(factors);
    }

    private static BigDecimal per(MassUnit unit, BigDecimal divisor) {
        return kg(unit).divide(divisor, MathContext.DECIMAL128);
    }

    private static BigDecimal kg(MassUnit unit) {
        return exact(unit.toKg(1));
    }

    private static BigDecimal m(LengthUnit unit) {
        return exact(unit.toM(1));
    }

    private static BigDecimal exact(double value) {
        return BigDecimal.valueOf(value);
    }
}
