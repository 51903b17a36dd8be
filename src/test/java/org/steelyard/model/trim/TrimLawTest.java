package org.steelyard.model.trim;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.analysis.interpolation.LinearInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.limit.CgRange;
import org.steelyard.model.unit.Amounts;
import org.steelyard.samples.Plain;

class TrimLawTest {

    private static final TrimPoints POINTS = new TrimPoints(
            List.of(new TrimPoint(10, 4), new TrimPoint(20, 2), new TrimPoint(24, 2), new TrimPoint(36, -1)));
    private static final TrimTable TABLE = new TrimTable(
            Amounts.of(50_000, 70_000), Amounts.of(10, 20, 30), List.of(Amounts.of(4, 2, 0), Amounts.of(6, 3, 1)));
    private static final TrimSlope SLOPE = new TrimSlope(new TrimPoint(27.5, 0.2), -0.15, new CgRange(8, 38));

    @ParameterizedTest
    @CsvSource({"10, 4", "15, 3", "20, 2", "22, 2", "30, 0.5", "36, -1"})
    void pointsAreJoinedByStraightLines(double cg, double trim) {
        assertThat(POINTS.trimUnitsAt(cg, 60_000).orElseThrow()).isCloseTo(trim, within(1e-12));
    }

    @Test
    void noLawIsExtended() {
        assertThat(POINTS.trimUnitsAt(9.99, 60_000)).isEmpty();
        assertThat(POINTS.trimUnitsAt(36.01, 60_000)).isEmpty();
        assertThat(TABLE.trimUnitsAt(20, 49_999)).isEmpty();
        assertThat(TABLE.trimUnitsAt(20, 70_001)).isEmpty();
        assertThat(TABLE.trimUnitsAt(30.1, 60_000)).isEmpty();
        assertThat(SLOPE.trimUnitsAt(38.1, 60_000)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"10, 50000, 4", "10, 60000, 5", "15, 60000, 3.75", "25, 65000, 1.75", "30, 70000, 1"})
    void aTableIsBilinear(double cg, double mass, double trim) {
        assertThat(TABLE.trimUnitsAt(cg, mass).orElseThrow()).isCloseTo(trim, within(1e-12));
    }

    /** The scale at one mass, made of the table's rows, is a law of its own: both must agree to the bit. */
    @Test
    void aTableAgreesWithItsScaleAtAnyMass() {
        SplittableRandom random = new SplittableRandom(6);
        for (int i = 0; i < 2000; i++) {
            double massKg = i % 20 == 0 ? 70_000 : random.nextDouble(50_000, 70_000);
            double cg = i % 7 == 0 ? 10.0 * (1 + i % 3) : random.nextDouble(9, 31);
            assertThat(TABLE.trimUnitsAt(cg, massKg))
                    .as("cg %s, mass %s", cg, massKg)
                    .isEqualTo(new TrimPoints(TABLE.pointsAt(massKg)).trimUnitsAt(cg, massKg));
        }
    }

    @Test
    void aSlopeGoesThroughItsAnchor() {
        assertThat(SLOPE.trimUnitsAt(27.5, 1).orElseThrow()).isEqualTo(0.2);
        assertThat(SLOPE.trimUnitsAt(17.5, 1).orElseThrow()).isCloseTo(1.7, within(1e-12));
    }

    /** Hipparchus' linear interpolator as a second opinion on a thousand drawn scales. */
    @Test
    void pointsAgreeWithHipparchus() {
        for (long seed = 0; seed < 1000; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            double[] cgs = new double[6];
            double[] trims = new double[6];
            for (int i = 0; i < 6; i++) {
                cgs[i] = (i == 0 ? 5 : cgs[i - 1]) + random.nextDouble(0.5, 6);
                trims[i] = (i == 0 ? 8 : trims[i - 1]) - random.nextDouble(0, 2);
            }
            PolynomialSplineFunction other = new LinearInterpolator().interpolate(cgs, trims);
            List<TrimPoint> points = java.util.stream.IntStream.range(0, 6)
                    .mapToObj(i -> new TrimPoint(cgs[i], trims[i]))
                    .toList();
            TrimPoints law = new TrimPoints(points);
            for (int k = 0; k < 50; k++) {
                double cg = random.nextDouble(cgs[0], cgs[5]);
                assertThat(Math.abs(law.trimUnitsAt(cg, 0).orElseThrow() - other.value(cg)))
                        .as("seed %d", seed)
                        .isLessThan(1e-12);
            }
        }
    }

    @Test
    void theInverseGivesTheCgsOfABand() {
        assertThat(POINTS.cgFor(1, 3, 0)).contains(new CgRange(15, 28));
        assertThat(POINTS.cgFor(2, 2, 0)).contains(new CgRange(20, 24));
        assertThat(POINTS.cgFor(-9, 9, 0)).contains(new CgRange(10, 36));
        assertThat(POINTS.cgFor(4.1, 9, 0)).isEmpty();
        assertThat(POINTS.cgFor(-9, -1.1, 0)).isEmpty();
        assertThat(TABLE.cgFor(0, 9, 80_000)).isEmpty();
    }

    @Test
    void trimThatTurnsNoseUpAsTheCgMovesAftIsRefused() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TrimPoints(List.of(new TrimPoint(10, 1), new TrimPoint(20, 2))))
                .withMessageContaining("sign");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new TrimSlope(new TrimPoint(25, 0), 0.1, new CgRange(10, 30)))
                .withMessageContaining("sign");
    }

    @ParameterizedTest
    @CsvSource({
        "0.24, 0.1, 0.2",
        "0.26, 0.1, 0.3",
        "-0.26, 0.1, -0.3",
        "0.25, 0.5, 0.5",
        "-0.25, 0.5, 0",
        "3.1, 0.25, 3"
    })
    void theSettingIsTheNearestStepAndHalfwayTheMoreNoseUpOne(double trim, double step, double setting) {
        TrimScale scale = Plain.trimScale(Phase.TAKEOFF, "5", "", TrimUnit.UNITS, SLOPE, step, -5, 5);
        assertThat(scale.settingFor(trim)).isCloseTo(setting, within(1e-12));
    }
}
