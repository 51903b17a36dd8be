package org.steelyard.analyse.figure;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.analyse.figure.MeanDifference.Sample;

class MeanDifferenceTest {

    /**
     * Two samples of five with variance v each: the error is sqrt(2 v / 5), and Welch's freedom is 8 whatever v, so a
     * difference of twice the error has the two-sided chance of t = 2 with 8 degrees, 0.0805 (tables of Student's t).
     */
    @ParameterizedTest
    @ValueSource(doubles = {1e-300, 1e-160, 1, 1e160, 1e300})
    void thePlaceOfTheDecimalPointIsNothingToTheTest(double variance) {
        double error = Math.sqrt(2 * variance / 5);
        MeanDifference found =
                MeanDifference.of(new Sample(5, 2 * error, 4 * variance), new Sample(5, 0, 4 * variance));
        assertThat(found.chance()).isBetween(0.08045, 0.08055);
        assertThat(found.effect()).isBetween(1.2648, 1.2650);
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.POSITIVE_INFINITY, Double.NaN})
    void aSpreadWithoutEndIsNoEvidence(double squares) {
        MeanDifference found = MeanDifference.of(new Sample(5, 1, squares), new Sample(5, 0, 1));
        assertThat(found.chance()).isEqualTo(1);
    }
}
