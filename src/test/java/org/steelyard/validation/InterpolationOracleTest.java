package org.steelyard.validation;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.analysis.interpolation.BilinearInterpolator;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.steelyard.model.trim.TrimPoint;
import org.steelyard.model.trim.TrimPoints;
import org.steelyard.model.trim.TrimTable;
import org.steelyard.model.type.Tank;
import org.steelyard.model.type.TankPoint;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.Draws;
import org.steelyard.samples.Plain;

/** Every interpolation of the program against that of a general reference library, on tables drawn from seeds. */
@Tag("validation")
class InterpolationOracleTest {

    private static final int TABLES = Draws.of(3000);
    private static final int READINGS = 10;

    private static double[] rising(SplittableRandom random, int size, double from, double step) {
        double[] values = new double[size];
        double value = from;
        for (int i = 0; i < size; i++) {
            values[i] = value;
            value += random.nextDouble(0.1, 1) * step;
        }
        return values;
    }

    private static double[] falling(SplittableRandom random, int size) {
        double[] values = new double[size];
        double value = random.nextDouble(4, 8);
        for (int i = 0; i < size; i++) {
            values[i] = value;
            value -= random.nextInt(5) == 0 ? 0 : random.nextDouble(0, 1.5);
        }
        return values;
    }

    private static double within(SplittableRandom random, double[] values) {
        return random.nextDouble(values[0], values[values.length - 1]);
    }

    private static void near(double value, double expected, double tolerance, long seed) {
        if (!(Math.abs(value - expected) <= tolerance)) {
            throw new AssertionError("seed " + seed + ": " + value + " for " + expected);
        }
    }

    @Test
    void trimPointsAgreeWithLinearInterpolation() {
        for (long seed = 0; seed < TABLES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            int size = random.nextInt(2, 12);
            double[] cgs = rising(random, size, 10, 5);
            double[] units = falling(random, size);
            List<TrimPoint> points = new ArrayList<>();
            for (int i = 0; i < size; i++) {
                points.add(new TrimPoint(cgs[i], units[i]));
            }
            TrimPoints law = new TrimPoints(points);
            PolynomialSplineFunction other = new LinearInterpolator().interpolate(cgs, units);
            for (int i = 0; i < READINGS; i++) {
                double cgPercentMac = within(random, cgs);
                near(law.trimUnitsAt(cgPercentMac, 1).orElseThrow(), other.value(cgPercentMac), 1e-12, seed);
            }
            near(law.trimUnitsAt(cgs[size - 1], 1).orElseThrow(), units[size - 1], 0, seed);
        }
    }

    @Test
    void trimTablesAgreeWithBilinearInterpolation() {
        for (long seed = 0; seed < TABLES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] masses = rising(random, random.nextInt(2, 7), 40_000, 10_000);
            double[] cgs = rising(random, random.nextInt(2, 9), 10, 5);
            double[][] units = new double[masses.length][];
            List<Amounts> rows = new ArrayList<>();
            for (int i = 0; i < masses.length; i++) {
                units[i] = falling(random, cgs.length);
                rows.add(Amounts.of(units[i]));
            }
            TrimTable law = new TrimTable(Amounts.of(masses), Amounts.of(cgs), rows);
            var other = new BilinearInterpolator().interpolate(masses, cgs, units);
            for (int i = 0; i < READINGS; i++) {
                double massKg = within(random, masses);
                double cgPercentMac = within(random, cgs);
                double expected = other.value(massKg, cgPercentMac);
                near(law.trimUnitsAt(cgPercentMac, massKg).orElseThrow(), expected, 1e-11, seed);
            }
        }
    }

    @Test
    void tankMomentsAgreeWithLinearInterpolation() {
        for (long seed = 0; seed < TABLES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] quantities = rising(random, random.nextInt(2, 12), 0, 2000);
            double[] moments = new double[quantities.length];
            List<TankPoint> rows = new ArrayList<>();
            for (int i = 1; i < quantities.length; i++) {
                double armM = random.nextDouble(14, 20);
                moments[i] = quantities[i] * armM;
                rows.add(Plain.tankPoint(quantities[i], armM));
            }
            Tank tank = Plain.tank("drawn", "drawn", quantities[quantities.length - 1], rows);
            PolynomialSplineFunction other = new LinearInterpolator().interpolate(quantities, moments);
            for (int i = 0; i < READINGS; i++) {
                double quantityKg = within(random, quantities);
                near(tank.momentKgM(quantityKg), other.value(quantityKg), 1e-7, seed);
            }
        }
    }
}
