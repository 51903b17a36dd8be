package org.steelyard.analyse.figure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Random;
import java.util.stream.IntStream;
import org.hipparchus.distribution.discrete.BinomialDistribution;
import org.hipparchus.stat.inference.TTest;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The tests and intervals against published examples and a second computation. */
@Tag("validation")
class ChanceTest {

    /** Example (a) of Newcombe (1998), 56 of 70 against 48 of 80, method 10: 0.0524 to 0.3339; from memory. */
    @Test
    void theIntervalOfAShareDifferenceIsNewcombes() {
        ShareDifference difference = ShareDifference.of(56, 70, 48, 80);
        assertThat(difference.difference()).isCloseTo(0.2, within(1e-12));
        assertThat(difference.low()).isCloseTo(0.0524, within(5e-5));
        assertThat(difference.high()).isCloseTo(0.3339, within(5e-5));
    }

    /**
     * Fisher, The Design of Experiments (1935), chapter 2: three of four cups right has a chance of 17/70 one-sided.
     */
    @Test
    void theChanceOfAShareDifferenceIsFishers() {
        assertThat(ShareDifference.of(3, 4, 1, 4).chance()).isCloseTo(2 * 17 / 70.0, within(1e-12));
        assertThat(ShareDifference.of(4, 4, 0, 4).chance()).isCloseTo(2 / 70.0, within(1e-12));
        assertThat(ShareDifference.of(0, 10, 0, 10).chance()).isEqualTo(1);
    }

    @Test
    void theNormalApproximationTakesOverWhereTheExactTestEndsWithoutAStep() {
        double exact = ShareDifference.of(9_900, 500_000, 10_100, 500_000).chance();
        double normal = ShareDifference.of(9_950, 500_000, 10_151, 500_000).chance();
        assertThat(normal).isCloseTo(exact, within(0.01));
    }

    /** Common practice, as the worked example of most texts on Holm: 0.01, 0.04, 0.03, 0.005. */
    @Test
    void chancesAreAdjustedByHolm() {
        assertThat(Holm.adjusted(0.01, 0.04, 0.03, 0.005))
                .containsExactly(new double[] {0.03, 0.06, 0.06, 0.02}, within(1e-15));
        assertThat(Holm.adjusted(0.9, 0.8)).containsExactly(1, 1);
        assertThat(Holm.adjusted()).isEmpty();
    }

    @Test
    void meansAreComparedAsHipparchusDoes() {
        Random random = new Random(4);
        for (int round = 0; round < 50; round++) {
            double[] one = random.doubles(5 + round).map(x -> 3 * x).toArray();
            double[] other = random.doubles(12).map(x -> x + 0.8).toArray();
            MeanDifference difference = MeanDifference.of(
                    ExactValues.ofSorted(one).sample(),
                    ExactValues.ofSorted(other).sample());
            assertThat(difference.chance()).isCloseTo(new TTest().tTest(one, other), within(1e-9));
            assertThat(difference.low()).isLessThan(difference.difference());
        }
    }

    @Test
    void aSampleWithoutAPartIsTheSampleOfTheRest() {
        double[] all = new Random(5).doubles(40).toArray();
        MeanDifference.Sample rest = ExactValues.ofSorted(all)
                .sample()
                .without(ExactValues.ofSorted(Arrays.copyOfRange(all, 0, 15)).sample());
        MeanDifference.Sample direct =
                ExactValues.ofSorted(Arrays.copyOfRange(all, 15, 40)).sample();
        assertThat(rest.n()).isEqualTo(25);
        assertThat(rest.mean()).isCloseTo(direct.mean(), within(1e-14));
        assertThat(rest.squares()).isCloseTo(direct.squares(), within(1e-13));
    }

    /** All C(12, 5) ways to draw the group, ties among the values. */
    @Test
    void theRankTestComesCloseToCountingAllDraws() {
        double[] all = {1, 2, 2, 3, 4, 5, 5, 6, 7, 8, 9, 9};
        double[] group = {4, 7, 8, 9, 9};
        double seen = distance(all, group);
        long draws = 0;
        long asFar = 0;
        int masks = 1 << all.length;
        for (int mask = 0; mask < masks; mask++) {
            if (Integer.bitCount(mask) == group.length) {
                int drawn = mask;
                double[] other = IntStream.range(0, all.length)
                        .filter(i -> ((drawn >> i) & 1) == 1)
                        .mapToDouble(i -> all[i])
                        .toArray();
                draws++;
                asFar += distance(all, other) >= seen - 1e-9 ? 1 : 0;
            }
        }
        assertThat(draws).isEqualTo(792);
        assertThat(new RankTest(all).chance(group)).isCloseTo(asFar / 792.0, within(0.01));
    }

    /** How far the rank sum lies from its mean, ranks counted one by one. */
    private static double distance(double[] all, double[] group) {
        double sum = 0;
        for (double value : group) {
            double below = Arrays.stream(all).filter(x -> x < value).count();
            double same = Arrays.stream(all).filter(x -> x == value).count();
            sum += below + (same + 1) / 2;
        }
        return Math.abs(sum - group.length * (all.length + 1) / 2.0);
    }

    /** The ranks against the binomial distribution of a second library: they cover, and one less would not. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 20, 59, 71, 72, 100, 473, 3_000, 100_000})
    void theIntervalOfAPercentileCoversAndNoNarrowerOneDoes(int n) {
        for (double p : new double[] {0.05, 0.95}) {
            int[] ranks = TypicalRange.ranks(n, p);
            BinomialDistribution below = new BinomialDistribution(n, p);
            assertThat(below.cumulativeProbability(ranks[0] - 1)).isLessThanOrEqualTo(0.025);
            assertThat(below.cumulativeProbability(ranks[0])).isGreaterThan(0.025);
            assertThat(1 - below.cumulativeProbability(ranks[1] - 1)).isLessThanOrEqualTo(0.025 + 1e-12);
            assertThat(1 - below.cumulativeProbability(ranks[1] - 2)).isGreaterThan(0.025);
        }
    }

    @Test
    void theLowerEndNeedsSeventyTwoFlights() {
        assertThat(TypicalRange.ranks(71, 0.05)[0]).isZero();
        assertThat(TypicalRange.ranks(72, 0.05)[0]).isEqualTo(1);
        assertThat(TypicalRange.ofSorted(new double[] {1, 2}, 2).lowFrom()).isEmpty();
    }
}
