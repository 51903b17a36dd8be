package org.steelyard.check.chance;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NormalChanceTest {

    /** Abramowitz and Stegun, table 26.1: P(x) to fifteen decimals, and table 26.2 for -log Q(x) far out. */
    @ParameterizedTest
    @CsvSource({
        "0, 0.5",
        "1, 0.841344746068543",
        "2, 0.977249868051821",
        "3, 0.998650101968370",
        "-1, 0.158655253931457"
    })
    @Tag("validation")
    void theMiddleIsThatOfTheTables(double z, double chance) {
        assertThat(NormalChance.below(z)).isCloseTo(chance, within(1e-15));
    }

    @Test
    @Tag("validation")
    void tailsAreThoseOfAnotherLibraryToTwelveDigits() {
        NormalDistribution other = new NormalDistribution(0, 1);
        for (double z = -12; z <= 8; z += 0.01) {
            double expected = other.cumulativeProbability(z);
            assertThat(NormalChance.below(z)).as("z = %s", z).isCloseTo(expected, within(1e-11 * expected));
        }
        assertThat(NormalChance.below(-50)).isZero();
        assertThat(NormalChance.below(50)).isEqualTo(1);
    }

    @Test
    void aLimitFarOffHasNoChanceThatIsTold() {
        assertThat(NormalChance.outside(8.01)).isZero();
        assertThat(NormalChance.outside(7.99))
                .isEqualTo(NormalChance.below(-7.99))
                .isBetween(1e-16, 1e-15);
        assertThat(NormalChance.outside(-1)).isEqualTo(NormalChance.below(1));
        assertThat(NormalChance.outside(Double.NEGATIVE_INFINITY)).isEqualTo(1);
    }

    /** Fewer terms of the continued fraction are taken farther out, so few that the double is still the same. */
    @Test
    void fewTermsFarOutGiveTheSameDoubleAsSixty() {
        Random random = new Random(3);
        for (int i = 0; i < 100_000; i++) {
            double z = 6 + 32 * random.nextDouble() * random.nextDouble();
            double fraction = z;
            for (int k = 60; k >= 1; k--) {
                fraction = z + k / fraction;
            }
            double tail = StrictMath.exp(-z * z / 2) / Math.sqrt(2 * Math.PI) / fraction;
            assertThat(NormalChance.below(-z)).isEqualTo(tail);
        }
    }
}
