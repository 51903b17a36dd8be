package org.steelyard.report.output.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.report.output.page.Flights.SINGLE;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.flight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.GuardedText;
import org.steelyard.model.unit.MassMoment;
import org.steelyard.report.output.page.Runs;

class FlightsCsvTest {

    private static final String FIRST_COLUMNS = "file,row,flight,date,tail,type,from,to,flaps,zfw_kg,zfw_cg_pct_mac,"
            + "ramp_kg,tow_kg,tow_cg_pct_mac,lw_kg,lw_cg_pct_mac,trim_units,trim_setting,status,findings";

    @TempDir
    private Path reports;

    private CSVRecord only(AuditedFlight flight) throws IOException {
        return Csv.records(Runs.write(reports, List.of(flight), List.of()).resolve("flights.csv"))
                .get(0);
    }

    @Test
    void theAgreedColumnsComeFirstAndLinesEndWithALineFeed() throws IOException {
        Path folder = Runs.write(reports, List.of(flight("1").build()), List.of());
        String text = Runs.text(folder.resolve("flights.csv"));
        assertThat(text).startsWith(FIRST_COLUMNS + ",").doesNotContain("\r").endsWith("\n");
    }

    @Test
    void aFlightInDetailHasAllItsStates() throws IOException {
        AuditedFlight flight = flight("SY7")
                .row("march.csv", 12)
                .inDetail()
                .takeoff(61_234.5, 23.125)
                .checked()
                .build();
        CSVRecord line = only(flight);
        MassMoment zeroFuel = flight.balance().zeroFuel().orElseThrow();
        assertThat(line.get("file")).isEqualTo("march.csv");
        assertThat(line.get("row")).isEqualTo("12");
        assertThat(line.get("date")).isEqualTo("2025-03-14");
        assertThat(number(line, "tow_kg")).isEqualTo(61_234.5);
        assertThat(number(line, "tow_cg_pct_mac")).isCloseTo(23.125, within(1e-12));
        assertThat(number(line, "zfw_kg")).isEqualTo(zeroFuel.massKg());
        assertThat(number(line, "zfw_cg_pct_mac")).isEqualTo(100 * (zeroFuel.armM() - 16) / 4);
        assertThat(number(line, "ramp_kg")).isEqualTo(61_434.5);
        assertThat(number(line, "lw_kg")).isEqualTo(56_234.5);
        assertThat(number(line, "takeoff_fuel_kg")).isEqualTo(8000);
        assertThat(number(line, "underload_kg")).isEqualTo(16_000.0 - 8_760);
        assertThat(line.get("limited_by")).isEqualTo("maximum landing mass");
        assertThat(line.get("input_level")).isEqualTo("detail");
        assertThat(line.get("assumed")).isEqualTo("no");
        assertThat(number(line, "recorded_trim_units")).isEqualTo(3.4);
        assertThat(number(line, "tow_aft_margin_pct_mac"))
                .isEqualTo(flight.assessment().margins().get(0).aftPercentMac());
    }

    /** Index by its definition: mass times (arm - reference arm) over the divisor, and the constant. */
    @Test
    void theIndexIsThatOfTheType() throws IOException {
        assertThat(number(only(flight("1").takeoff(60_000, 30).build()), "tow_index"))
                .isCloseTo(60_000 * (17.2 - 17) / 1000 + 50, within(1e-9));
    }

    @Test
    void whatTheInputDoesNotGiveStaysEmpty() throws IOException {
        CSVRecord line = only(flight("1").tail("ZZ-L", SINGLE).takeoff(900, 25).build());
        assertThat(List.of(
                        line.get("zfw_kg"),
                        line.get("ramp_kg"),
                        line.get("lw_cg_pct_mac"),
                        line.get("trim_units"),
                        line.get("trim_setting"),
                        line.get("underload_kg"),
                        line.get("limited_by"),
                        line.get("zfw_aft_margin_pct_mac"),
                        line.get("recorded_trim_units"),
                        line.get("extras")))
                .containsOnly("");
        assertThat(line.get("input_level")).isEqualTo("take-off given");
    }

    @Test
    void trimIsGivenInFullAndAsASetting() throws IOException {
        CSVRecord line = only(flight("1").takeoff(60_000, 20.5).build());
        assertThat(number(line, "trim_units")).isCloseTo(4.275, within(1e-9));
        assertThat(line.get("trim_setting")).isEqualTo("4.3 UP");
    }

    @Test
    void findingsAreNamedWithTheirPhase() throws IOException {
        CSVRecord line = only(flight("1")
                .found(aft(Severity.BREACH, -1), aft(Severity.MARGINAL, 0.2))
                .build());
        assertThat(line.get("status")).isEqualTo("breached");
        assertThat(line.get("findings")).isEqualTo("cg-aft take-off; cg-aft take-off");
    }

    @Test
    void extrasShareACellFromWhichTheyCanBeTakenApart() throws IOException {
        CSVRecord line =
                only(flight("1").extra("pilot", "Ida; Bo").extra("a=b", "c\\d").build());
        assertThat(line.get("extras")).isEqualTo("pilot=Ida\\; Bo; a\\=b=c\\\\d");
    }

    @ParameterizedTest
    @CsvSource(
            quoteCharacter = '|',
            value = {
                "=HYPERLINK(\"x\")",
                "|a,b \"c\"|",
                "|two\nlines|",
                "\u0637\u064A\u0631\u0627\u0646",
                "'=1",
                "-1+1",
                "\uD83D\uDEEB"
            })
    void namesComeBackAsTheyWere(String name) throws IOException {
        CSVRecord line = only(flight(name).build());
        assertThat(GuardedText.free(line.get("flight"))).isEqualTo(name);
        assertThat(line.get("flight")).doesNotStartWith("=").doesNotStartWith("-");
    }

    @Test
    void halfASurrogatePairBecomesTheSignForUnknown() throws IOException {
        assertThat(only(flight("A\uD83D").build()).get("flight")).isEqualTo("A\uFFFD");
    }

    @Test
    void aSeasonWithoutFlightsHasItsHeadingsOnly() throws IOException {
        Path folder = Runs.write(reports, List.of(), List.of());
        assertThat(Csv.records(folder.resolve("flights.csv"))).isEmpty();
        assertThat(Runs.text(folder.resolve("flights.csv"))).startsWith(FIRST_COLUMNS);
    }

    private static double number(CSVRecord line, String column) {
        return Double.parseDouble(line.get(column));
    }
}
