package org.steelyard.analyse.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.hipparchus.stat.descriptive.StreamingStatistics;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

class SpreadTest {

    /** Expected values by the linear method of NumPy's quantile, which is definition 7. */
    @ParameterizedTest
    @CsvSource({"0, 1", "25, 2.25", "50, 3.5", "90, 6.3", "95, 7.65", "100, 9"})
    void percentilesAreInclusive(int percent, double expected) {
        double[] sorted = {1, 1, 2, 3, 3, 4, 5, 5, 6, 9};
        assertThat(Percentiles.inclusive(sorted, sorted.length, percent)).isCloseTo(expected, within(1e-12));
    }

    @Test
    void onlyThePartThatCountsIsLookedAt() {
        assertThat(Percentiles.inclusive(new double[] {1, 2, 0, 0}, 2, 100)).isEqualTo(2);
    }

    @ParameterizedTest
    @CsvSource({"0, 50", "1, -1", "1, 101"})
    void aPercentileThatIsNotThereIsRefused(int n, int percent) {
        assertThatThrownBy(() -> Percentiles.inclusive(new double[] {1}, n, percent))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("percentile");
    }

    @Test
    void oneNumberHasNoStandardDeviation() {
        Spread spread = Spread.of(4.25);
        assertThat(spread.n()).isOne();
        assertThat(spread.sd()).isEmpty();
        assertThat(new double[] {spread.mean(), spread.min(), spread.p5(), spread.median(), spread.p95(), spread.max()})
                .containsOnly(4.25);
    }

    @Test
    void equalNumbersSpreadNotAtAll() {
        double[] same = new double[1000];
        Arrays.fill(same, 0.1);
        assertThat(Spread.of(same).sd()).hasValue(0);
        assertThat(Spread.of(same).mean()).isEqualTo(0.1);
    }

    @Test
    void nothingHasNoSpread() {
        assertThatThrownBy(Spread::of).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void argumentsStayInTheirOrder() {
        double[] values = {3, 1, 2};
        assertThat(Spread.of(values).median()).isEqualTo(2);
        assertThat(values).containsExactly(3, 1, 2);
    }

    static Stream<Long> seeds() {
        return LongStream.range(0, 40).boxed();
    }

    /** Independent second computation: Hipparchus, percentile R-7 and streaming moments. */
    @ParameterizedTest
    @MethodSource("seeds")
    void randomNumbersSpreadAsAnIndependentLibrarySays(long seed) {
        Random random = new Random(seed);
        double[] values = random.doubles(1 + random.nextInt(400))
                .map(u -> 20 + 5 * u * (random.nextBoolean() ? 1 : -3))
                .toArray();
        Spread spread = Spread.of(values);
        StreamingStatistics moments = new StreamingStatistics();
        Arrays.stream(values).forEach(moments::addValue);
        Percentile percentile = new Percentile().withEstimationType(EstimationType.R_7);
        percentile.setData(values);
        assertThat(spread.n()).isEqualTo(values.length);
        assertThat(spread.mean()).isCloseTo(moments.getMean(), within(1e-12));
        assertThat(spread.sd().orElse(0)).isCloseTo(moments.getStandardDeviation(), within(1e-11));
        assertThat(spread.min()).isEqualTo(moments.getMin());
        assertThat(spread.max()).isEqualTo(moments.getMax());
        assertThat(spread.p5()).isCloseTo(percentile.evaluate(5), within(1e-12));
        assertThat(spread.p25()).isCloseTo(percentile.evaluate(25), within(1e-12));
        assertThat(spread.median()).isCloseTo(percentile.evaluate(50), within(1e-12));
        assertThat(spread.p75()).isCloseTo(percentile.evaluate(75), within(1e-12));
        assertThat(spread.p95()).isCloseTo(percentile.evaluate(95), within(1e-12));
    }
}
