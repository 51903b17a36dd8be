package org.steelyard.read.season;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.steelyard.read.row.Fixtures;

/** Which rows are totals, titles or headings, and which are faulty flights. */
class NoFlightsTest {

    private static final String HEADINGS = "Flight;Date;Tail;From;Pax A;Fuel;Taxi;Trip\n";
    private static final String FLIGHTS = HEADINGS
            + "T1;2024-05-01;SX-BAA;PORTA;10;3000,5;100;1500\n"
            + "T2;2024-05-01;SX-BAA;PORTA;20;3000,25;100;1500,125\n";

    @TempDir
    private Path folder;

    private ReadAll text(String rows) throws IOException {
        return ReadAll.text(folder, "s.csv", rows, Fixtures.withDecimalComma(Fixtures.MAP));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Total;;;;30",
                "TOTAL:;;;;;;;",
                "Grand total;;;;30;1;2;3",
                ";;;Sum of all;1;2;3;4",
                ";Summe;;;;;;3000",
                "Average;;;;15;3000;100;1500"
            })
    void aRowThatBeginsWithAWordForTotalsIsPassedOver(String row) throws IOException {
        ReadAll read = text(FLIGHTS + row + "\n");
        assertThat(read.flights()).containsExactly("T1", "T2");
        assertThat(read.reasons()).isEmpty();
        assertThat(read.skippedRows())
                .hasSize(1)
                .allMatch(reason -> reason.startsWith("s.csv:4: totals: it begins with '"));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Total;2024-05-01;SX-BAA;;30",
                "Total;;SX-BAA;;30;1;2;3",
                "Totally;;;;30;1;2;3",
                "T3;;;;30;1;2;3",
                ";;;;31;6000,75;200;3000,125",
                ";;;;30;6000,75;200;3000,2",
                ";;;;30;many;200;3000,125"
            })
    void aRowThatIsNoTotalsForSureIsRejected(String row) throws IOException {
        ReadAll read = text(FLIGHTS + row + "\n");
        assertThat(read.skippedRows()).isEmpty();
        assertThat(read.rejected()).hasSize(1);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                ";;;;30;6000,75;200;3000,125",
                ";;;;30;6000,8;200;3000,1",
                ";;;;30;;;",
                ";;;all of May;30;6001;200;3000",
            })
    void numbersThatAreTheSumsAboveAreTotals(String row) throws IOException {
        ReadAll read = text(FLIGHTS + row + "\n");
        assertThat(read.reasons()).isEmpty();
        assertThat(read.skippedRows())
                .containsExactly("s.csv:4: totals: no flight, date and tail, and the sums of the flights above");
    }

    @Test
    void sumsOfASectionAndOfAllAreTotals() throws IOException {
        ReadAll read = text(FLIGHTS
                + ";;;;30;;;\n"
                + "T3;2024-05-02;SX-BAA;PORTA;1;3000;100;1500\n"
                + "T4;2024-05-02;SX-BAA;PORTA;2;3000;100;1500\n"
                + ";;;;3;;;\n"
                + ";;;;33;;;\n"
                + ";;;;36;;;\n");
        assertThat(read.flights()).containsExactly("T1", "T2", "T3", "T4");
        assertThat(read.skippedRows())
                .extracting(reason -> reason.replaceFirst("^[^:]*:([^:]*):.*", "$1"))
                .containsExactly("4", "7", "8");
        assertThat(read.rejected()).hasSize(1);
    }

    @Test
    void oneFlightIsNoSum() throws IOException {
        ReadAll read = text(HEADINGS + "T1;2024-05-01;SX-BAA;PORTA;10;3000;100;1500\n;;;;10;3000;100;1500\n");
        assertThat(read.rejected()).hasSize(1);
    }

    @Test
    void theHeadingsOnceMoreArePassedOver() throws IOException {
        ReadAll read = text(FLIGHTS + "\n" + HEADINGS.replace("Flight", " FLIGHT ") + "T3" + FLIGHTS.substring(45, 91));
        assertThat(read.skippedRows()).containsExactly("s.csv:5: the headings once more");
        assertThat(read.flights()).hasSize(3);
        assertThat(read.blank()).isEqualTo(1);
    }
}
