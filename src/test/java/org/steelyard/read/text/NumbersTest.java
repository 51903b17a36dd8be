package org.steelyard.read.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NumbersTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0",
        "-0, 0",
        "7, 7",
        "+7, 7",
        "-7.25, -7.25",
        "007, 7",
        "12.5, 12.5",
        "0.1, 0.1",
        "0.30000000000000004, 0.30000000000000004",
        "9007199254740993, 9007199254740992",
        "123456789012345678901234567890, 1.2345678901234568e29"
    })
    void aNumberReadsAsTheNearestDouble(String text, double value) {
        assertThat(NumberGrammar.parse(text, '.', false)).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "-",
                "+",
                ".",
                "5.",
                ".5",
                "1,000",
                "12,5",
                "1 000",
                "1d",
                "2f",
                "0x10",
                "1e5",
                "1E5",
                "NaN",
                "Infinity",
                "--1",
                "1-",
                "1.2.3",
                "١٢",
                "−5",
                "5 kg",
                "1_000",
                "'5"
            })
    void anythingElseIsNoNumber(String text) {
        assertThat(NumberGrammar.parse(text, '.', false)).isNaN();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = ' ',
            value = {"12,5 12.5", "-0,25 -0.25", "1234567,000000000001 1234567.000000000001", "7 7"})
    void withADecimalCommaTheCommaIsTheDecimalSign(String text, double value) {
        assertThat(NumberGrammar.parse(text, ',', false)).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"12.5", "1.000,5", "1.000"})
    void withADecimalCommaAPointIsNone(String text) {
        assertThat(NumberGrammar.parse(text, ',', false)).isNaN();
    }

    @ParameterizedTest
    @CsvSource({"1E5, 1e5", "1.5e-7, 1.5e-7", "-2E+3, -2000", "1E999, Infinity"})
    void anExponentIsReadWhereAWorkbookStoredIt(String text, double value) {
        assertThat(NumberGrammar.parse(text, '.', true)).isEqualTo(value);
    }

    @ParameterizedTest
    @ValueSource(strings = {"1E", "1E+", "E5", "1E5.5", "1E5x"})
    void halfAnExponentIsNone(String text) {
        assertThat(NumberGrammar.parse(text, '.', true)).isNaN();
    }

    /** The reading of the Java language specification is the oracle. */
    @Test
    void everyDecimalReadsAsTheLibraryReadsIt() {
        long seed = 20_240_501;
        Random random = new Random(seed);
        for (int i = 0; i < 200_000; i++) {
            String whole = digits(random, 1 + random.nextInt(12));
            String text = (random.nextBoolean() ? "-" : "")
                    + whole
                    + (random.nextInt(4) == 0 ? "" : "." + digits(random, 1 + random.nextInt(8)));
            double expected = Double.parseDouble(text) == 0 ? 0 : Double.parseDouble(text);
            assertThat(NumberGrammar.parse(text, '.', false))
                    .as("%s, seed %d", text, seed)
                    .isEqualTo(expected);
        }
    }

    private static String digits(Random random, int count) {
        StringBuilder digits = new StringBuilder();
        for (int i = 0; i < count; i++) {
            digits.append((char) ('0' + random.nextInt(10)));
        }
        return digits.toString();
    }
}
