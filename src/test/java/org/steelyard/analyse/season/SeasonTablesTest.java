package org.steelyard.analyse.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.steelyard.report.output.page.Flights.POLICY;
import static org.steelyard.report.output.page.Flights.SINGLE;
import static org.steelyard.report.output.page.Flights.flight;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.steelyard.check.result.AuditedFlight;
import tech.tablesaw.api.Table;

class SeasonTablesTest {

    private static SeasonSummary summary(AuditedFlight... flights) {
        SeasonTally tally = new SeasonTally(POLICY);
        Stream.of(flights).forEach(tally::add);
        return tally.summary();
    }

    @Test
    void theTrimTableHoldsTheSummarysOwnFigures() {
        SeasonSummary summary = summary(
                flight("1").flaps("15").takeoff(60_000, 20).build(),
                flight("2").flaps("5").takeoff(60_000, 20).build(),
                flight("3").flaps("5").takeoff(60_000, 24).build(),
                flight("4").tail("ZZ-L", SINGLE).takeoff(900, 25).build());
        Table trim = SeasonTables.trimSpread(summary);
        assertThat(trim.columnNames())
                .containsExactly(
                        "type", "flaps", "thrust", "n", "mean", "sd", "min", "p5", "p25", "median", "p75", "p95",
                        "max");
        assertThat(trim.stringColumn("type").asList()).containsExactly("J180", "J180", "L4");
        assertThat(trim.stringColumn("flaps").asList()).containsExactly("5", "15", "");
        assertThat(trim.longColumn("n").asObjectArray()).containsExactly(2L, 1L, 0L);
        assertThat(trim.doubleColumn("p25").getDouble(0)).isCloseTo(3.65, within(1e-9));
        assertThat(trim.doubleColumn("sd").getDouble(0)).isCloseTo(Math.sqrt(0.5), within(1e-9));
    }

    @Test
    void whatIsNotKnownIsMissingAndNotZero() {
        Table trim = SeasonTables.trimSpread(summary(
                flight("1").build(),
                flight("2").tail("ZZ-L", SINGLE).takeoff(900, 25).build()));
        assertThat(trim.doubleColumn("sd").isMissing(0)).isTrue();
        assertThat(trim.doubleColumn("mean").isMissing(0)).isFalse();
        assertThat(trim.doubleColumn("mean").isMissing(1)).isTrue();
    }

    @Test
    void theCgTableHasAllFlights() {
        Table cg = SeasonTables.cgSpread(summary(
                flight("1").takeoff(60_000, 60).build(),
                flight("2").takeoff(60_000, 20).build()));
        assertThat(cg.longColumn("n").getLong(0)).isEqualTo(2);
        assertThat(cg.doubleColumn("max").getDouble(0)).isCloseTo(60, within(1e-9));
    }

    @Test
    void aSeasonWithoutFlightsHasTablesWithoutRows() {
        assertThat(SeasonTables.trimSpread(summary()).rowCount()).isZero();
    }
}
