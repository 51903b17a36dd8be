package org.steelyard.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held to {@link String#format}, which is the slow way. */
class FixedDecimalsTest {

    private static void holds(double value, int decimals) {
        assertThat(FixedDecimals.of(value, decimals))
                .as("%s with %d decimals", value, decimals)
                .isEqualTo(String.format(Locale.ROOT, "%." + decimals + "f", value));
    }

    @ParameterizedTest
    @ValueSource(
            doubles = {
                0,
                -0.0,
                0.05,
                0.15,
                0.25,
                0.5,
                1.5,
                2.5,
                0.005,
                1.005,
                0.0005,
                0.999,
                0.9996,
                9.995,
                -0.04,
                -0.5,
                -1.25,
                1e8,
                99999999.9995,
                1e9,
                123456789.0625,
                1e15,
                1e22,
                4.9e-324,
                Double.MAX_VALUE
            })
    void edgesAndTiesAreWrittenAsByTheFormatter(double value) {
        for (int decimals = 0; decimals < 6; decimals++) {
            holds(value, decimals);
        }
    }

    /** What is subtracted comes out a last digit beside a whole number. */
    @Test
    void aNumberBesideAWholeOneIsWrittenAsByTheFormatter() {
        for (int whole = 1; whole < 3_000; whole++) {
            for (int decimals = 0; decimals < 4; decimals++) {
                double value = whole / Math.pow(10, decimals);
                holds(Math.nextDown(value), decimals);
                holds(Math.nextUp(value), decimals);
            }
        }
    }

    @Test
    void anyNumberIsWrittenAsByTheFormatter() {
        Random random = new Random(17);
        double[] sizes = {1, 10, 1000, 80_000, 1e8, 1e10};
        for (int i = 0; i < 40_000; i++) {
            holds((random.nextDouble() - 0.5) * sizes[i % sizes.length], i % 4);
        }
    }

    @Test
    void numbersNearTiesAreWrittenAsByTheFormatter() {
        Random random = new Random(18);
        for (int i = 0; i < 40_000; i++) {
            double tie = (random.nextInt(2_000_000) - 1_000_000 + 0.5) / 100;
            holds(i % 3 == 0 ? tie : i % 3 == 1 ? Math.nextUp(tie) : Math.nextDown(tie), 2);
        }
    }
}
