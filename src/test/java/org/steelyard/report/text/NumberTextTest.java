package org.steelyard.report.text;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.model.unit.Counted;

class NumberTextTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0 %",
        "0, 9, 0 %",
        "9, 9, 100 %",
        "1, 8, 12.5 %",
        "1, 100000, under 0.1 %",
        "99999, 100000, over 99.9 %"
    })
    void aShareNeverRoundsSomethingAway(long part, long whole, String share) {
        assertThat(NumberText.share(part, whole)).isEqualTo(share);
    }

    @Test
    void numbersAreGroupedAndSigned() {
        assertThat(Counted.number(1234567)).isEqualTo("1,234,567");
        assertThat(NumberText.fixed(-1234.5, 1)).isEqualTo("−1,234.5");
        assertThat(NumberText.fixed(-0.001, 2)).isEqualTo("0.00");
        assertThat(Counted.of(1, "flight")).isEqualTo("1 flight");
        assertThat(Counted.of(0, "flight")).isEqualTo("0 flights");
    }
}
