package org.steelyard.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlainNumberTest {

    @ParameterizedTest
    @CsvSource({
        "72000, 72000",
        "-0.0, 0",
        "0.1, 0.1",
        "1e7, 10000000",
        "123456789.125, 123456789.125",
        "0.00025, 0.00025",
        "2e23, 200000000000000000000000",
        "-1.5e-7, -0.00000015",
        "1e-10, 0.0000000001",
        "0.30000000000000004, 0.30000000000000004"
    })
    void numbersArePlainDecimals(double number, String plain) {
        assertThat(PlainNumber.of(number)).isEqualTo(plain);
    }

    @ParameterizedTest
    @CsvSource({
        "63600, 0, '63,600'",
        "999.5, 0, '1,000'",
        "-1234567.125, 2, '-1,234,567.13'",
        "-123, 0, -123",
        "24.995, 2, 25.00",
        "0.05, 1, 0.1",
        "-0.04, 1, 0.0",
        "1e12, 1, '1,000,000,000,000.0'",
        "NaN, 1, NaN"
    })
    void shownNumbersAreRoundedAndGrouped(double number, int decimals, String shown) {
        assertThat(PlainNumber.grouped(number, decimals)).isEqualTo(shown);
    }

    @Test
    void shownNumbersAreThoseOfTheLibrary() {
        Random random = new Random(98);
        for (int i = 0; i < 20_000; i++) {
            double number = random.nextGaussian() * Math.pow(10, random.nextInt(9));
            int decimals = random.nextInt(4);
            String library = String.format(Locale.ROOT, "%,." + decimals + "f", number);
            assertThat(PlainNumber.grouped(number, decimals))
                    .isEqualTo(library.matches("-0(\\.0*)?") ? library.substring(1) : library);
        }
    }

    @Test
    void anyNumberReadsBackAsTheSameAndNoShorterOneWould() {
        Random random = new Random(99);
        for (int i = 0; i < 20_000; i++) {
            double number = Double.longBitsToDouble(random.nextLong());
            if (!Double.isFinite(number)) {
                continue;
            }
            String plain = PlainNumber.of(number);
            assertThat(Double.parseDouble(plain)).isEqualTo(number);
            assertThat(plain).doesNotContain("E").doesNotEndWith(".0");
            BigDecimal exact = new BigDecimal(plain).stripTrailingZeros();
            if (exact.precision() > 1) {
                BigDecimal shorter = exact.round(new java.math.MathContext(exact.precision() - 1));
                assertThat(shorter.doubleValue()).isNotEqualTo(number);
            }
        }
    }
}
