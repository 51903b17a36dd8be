package org.steelyard.read.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DateFormatTest {

    @ParameterizedTest
    @CsvSource({
        "'', 2024-02-29, 2024-02-29",
        "dd.MM.yyyy, 29.02.2024, 2024-02-29",
        "dd.MM.uuuu, 29.02.2024, 2024-02-29",
        "d/M/yy, 1/4/24, 2024-04-01",
        "M/d/yyyy, 1/4/2024, 2024-01-04",
        "ddMMMyy, 05MAY24, 2024-05-05",
        "yyyyMMdd, 20240501, 2024-05-01",
        "dd.MM.yyyy HH:mm, 01.05.2024 23:15, 2024-05-01"
    })
    void aDateReadsByItsPattern(String pattern, String text, LocalDate date) {
        assertThat(new DateFormat(pattern).parse(text)).contains(date);
        assertThat(new DateFormat(pattern).parse(text)).contains(date);
    }

    @ParameterizedTest
    @CsvSource({
        "'', 2023-02-29",
        "'', 2024-13-01",
        "'', 2024-00-10",
        "'', 2024-04-31",
        "'', 2024-4-1",
        "'', 24-04-01",
        "'', 2024/04/01",
        "'', 2024-04-01T10:00",
        "'', 2O24-04-01",
        "dd.MM.yyyy, 32.13",
        "dd.MM.yyyy, 31.04.2024",
        "dd.MM.yyyy, 29.02.2023",
        "dd.MM.yyyy, 2024-04-01",
        "dd.MM.yyyy, 1.4.2024"
    })
    void whatIsNoDayOfThatPatternIsNone(String pattern, String text) {
        assertThat(new DateFormat(pattern).parse(text)).isEmpty();
    }

    @Test
    void aDateIsWrittenAsItIsRead() {
        LocalDate day = LocalDate.of(2024, 12, 30);
        assertThat(new DateFormat("dd.MM.yyyy").format(day)).isEqualTo("30.12.2024");
        assertThat(new DateFormat("").format(day)).isEqualTo("2024-12-30");
    }
}
