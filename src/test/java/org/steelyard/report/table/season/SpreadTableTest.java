package org.steelyard.report.table.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.report.output.page.Flights.POLICY;
import static org.steelyard.report.output.page.Flights.SINGLE;
import static org.steelyard.report.output.page.Flights.flight;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steelyard.analyse.season.SeasonSummary;
import org.steelyard.analyse.season.SeasonTally;
import org.steelyard.check.result.AuditedFlight;
import org.steelyard.report.table.DataTable;
import org.steelyard.report.table.TableCell;

class SpreadTableTest {

    private static SeasonSummary summary(AuditedFlight... flights) {
        SeasonTally tally = new SeasonTally(POLICY);
        Stream.of(flights).forEach(tally::add);
        return tally.summary();
    }

    private static List<TableCell> column(DataTable table, String heading) {
        for (int i = 0; i < table.columns().size(); i++) {
            if (table.columns().get(i).heading().equals(heading)) {
                int column = i;
                return table.rows().stream().map(row -> row.get(column)).toList();
            }
        }
        throw new AssertionError("no column " + heading);
    }

    private static List<String> shown(DataTable table, String heading) {
        return column(table, heading).stream().map(TableCell::shown).toList();
    }

    @Test
    void theTrimTableHoldsTheFiguresOfItsScalesInOrder() {
        DataTable trim = SpreadTable.trim(summary(
                flight("1").flaps("15").takeoff(60_000, 20).build(),
                flight("2").flaps("5").takeoff(60_000, 20).build(),
                flight("3").flaps("5").takeoff(60_000, 24).build(),
                flight("4").tail("ZZ-L", SINGLE).takeoff(900, 25).build()));
        assertThat(shown(trim, "Type")).containsExactly("J180", "J180", "L4");
        assertThat(shown(trim, "Flaps")).startsWith("5", "15");
        assertThat(shown(trim, "n")).containsExactly("2", "1", "0");
        // trims of 3.4 and 4.4: a quarter of the way 3.65, standard deviation of two that differ by one √½
        assertThat(column(trim, "P25").get(0).number().orElseThrow()).isCloseTo(3.65, within(1e-9));
        assertThat(column(trim, "SD").get(0).number().orElseThrow()).isCloseTo(Math.sqrt(0.5), within(1e-9));
    }

    @Test
    void whatIsNotKnownIsMissingAndNotZero() {
        DataTable trim = SpreadTable.trim(summary(
                flight("1").build(),
                flight("2").tail("ZZ-L", SINGLE).takeoff(900, 25).build()));
        assertThat(column(trim, "SD").get(0).isMissing()).isTrue();
        assertThat(column(trim, "Mean").get(0).number()).isPresent();
        assertThat(column(trim, "Mean").get(1).number()).isEmpty();
        assertThat(column(trim, "Max").get(1).isMissing()).isTrue();
    }

    @Test
    void theCgTableHasAllFlights() {
        DataTable cg = SpreadTable.cg(summary(
                flight("1").takeoff(60_000, 60).build(),
                flight("2").takeoff(60_000, 20).build()));
        assertThat(shown(cg, "n")).containsExactly("2");
        assertThat(column(cg, "Max").get(0).number().orElseThrow()).isCloseTo(60, within(1e-9));
    }

    @Test
    void aSeasonWithoutFlightsHasTablesWithoutRows() {
        assertThat(SpreadTable.trim(summary()).rows()).isEmpty();
    }
}
