package org.steelyard.report.output.csv;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.report.output.page.Flights.SINGLE;
import static org.steelyard.report.output.page.Flights.aft;
import static org.steelyard.report.output.page.Flights.finding;
import static org.steelyard.report.output.page.Flights.flight;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.apache.commons.csv.CSVRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.model.finding.Finding;
import org.steelyard.model.finding.FindingCode;
import org.steelyard.model.finding.Phase;
import org.steelyard.model.finding.Severity;
import org.steelyard.model.unit.Quantity;
import org.steelyard.report.output.page.Runs;

class FindingsCsvTest {

    @TempDir
    private Path reports;

    private List<CSVRecord> lines(AuditedFlight... flights) throws IOException {
        return Csv.records(Runs.write(reports, List.of(flights), List.of()).resolve("findings.csv"));
    }

    @Test
    void eachFindingHasALineAndFlightsWithoutHaveNone() throws IOException {
        List<CSVRecord> lines = lines(
                flight("1")
                        .found(aft(Severity.BREACH, -1), aft(Severity.MARGINAL, 0.25))
                        .build(),
                flight("2").build(),
                flight("3").row("b.csv", 9).found(aft(Severity.MARGINAL, 0.5)).build());
        assertThat(lines).extracting(line -> line.get("flight")).containsExactly("1", "1", "3");
        CSVRecord first = lines.get(0);
        assertThat(first.get("severity")).isEqualTo("breach");
        assertThat(first.get("code")).isEqualTo("cg-aft");
        assertThat(first.get("phase")).isEqualTo("take-off");
        assertThat(first.get("subject")).isEqualTo("aft limit");
        assertThat(first.get("value")).isEqualTo("35");
        assertThat(first.get("limit")).isEqualTo("34");
        assertThat(first.get("margin")).isEqualTo("-1");
        assertThat(first.get("unit")).isEqualTo("% MAC");
        assertThat(first.get("sentence"))
                .isEqualTo("take-off CG 35.00 % MAC is 1.00 % MAC behind the aft limit of 34.00 % MAC");
        assertThat(lines.get(2).get("row")).isEqualTo("9");
    }

    /** 1 lb is 0.45359237 kg exactly. */
    @Test
    void figuresAreInTheUsersUnitsAndInThoseOfTheProgram() throws IOException {
        Finding heavy = finding(FindingCode.MASS_HIGH, Severity.BREACH, Quantity.MASS, 1200, 1111, -89);
        CSVRecord line = lines(flight("1")
                        .tail("ZZ-L", SINGLE)
                        .takeoff(1200, 25)
                        .found(heavy)
                        .build())
                .get(0);
        assertThat(Double.parseDouble(line.get("value"))).isCloseTo(1200 / 0.45359237, within(1e-9));
        assertThat(Double.parseDouble(line.get("margin"))).isCloseTo(-89 / 0.45359237, within(1e-9));
        assertThat(line.get("unit")).isEqualTo("lb");
        assertThat(line.get("value_si")).isEqualTo("1200");
        assertThat(line.get("margin_si")).isEqualTo("-89");
        assertThat(line.get("unit_si")).isEqualTo("kg");
    }

    @Test
    void aFindingWithoutNumbersHasNone() throws IOException {
        Finding note = Finding.plain(FindingCode.SHARED_LOAD, Severity.NOTE, Phase.ZERO_FUEL, "=shared, by capacity");
        CSVRecord line = lines(flight("1").found(note).build()).get(0);
        assertThat(List.of(
                        line.get("value"),
                        line.get("limit"),
                        line.get("margin"),
                        line.get("unit"),
                        line.get("value_si")))
                .containsOnly("");
        assertThat(line.get("subject")).isEqualTo("'=shared, by capacity");
    }
}
